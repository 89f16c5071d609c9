import type { Vector3 } from '../geometry/vector.js';

/** The exact surfaces that cuts leave. Axes and normals have length one. */
export type Surface =
  /** `normal` points out of the material. */
  | { readonly kind: 'plane'; readonly point: Vector3; readonly normal: Vector3 }
  | { readonly kind: 'cylinder'; readonly origin: Vector3; readonly axis: Vector3; readonly radius: number }
  /** `axis` points from the apex into the cone; `halfAngle` in degrees, between axis and side. */
  | { readonly kind: 'cone'; readonly apex: Vector3; readonly axis: Vector3; readonly halfAngle: number }
  | { readonly kind: 'torus'; readonly centre: Vector3; readonly axis: Vector3; readonly major: number; readonly minor: number }
  | { readonly kind: 'sphere'; readonly centre: Vector3; readonly radius: number };

/** Where a facet comes from: which face of which cut. The stock is the cut `stock`; a section plane is the cut `section`. */
export interface FaceTag {
  readonly cut: string;
  readonly face: string;
}

export interface SolidFace {
  readonly tag: FaceTag;
  /** Index into the solid's `surfaces`. */
  readonly surface: number;
}

/**
 * A closed body as a mesh whose every facet knows its face, and whose every face knows its exact surface. Faces that lie
 * on one and the same surface share its entry. Facets only decide what is where; nothing is measured from them.
 */
export interface Solid {
  /** x, y, z of each vertex, mm. */
  readonly positions: Float64Array;
  /** Three vertex indices a triangle, counter-clockwise seen from outside. */
  readonly triangles: Uint32Array;
  /** For each triangle, the index of its face. */
  readonly faceOfTriangle: Uint32Array;
  readonly faces: readonly SolidFace[];
  readonly surfaces: readonly Surface[];
  /** The greatest distance between a facet and its surface, mm. */
  readonly facetError: number;
  /** Set for a mirror image: the solid that it is the image of, and the axis along which that is reversed, through its zero. */
  readonly imageOf?: { readonly solid: Solid; readonly axis: 'x' | 'y' | 'z' };
}
