import type { Vector3 } from '../geometry/vector.js';
import type { Surface } from './model.js';

/** A face of a form: its name, its exact surface (plane normals point out of the form), and its chords' greatest sag, mm. */
export interface FormFace {
  readonly face: string;
  readonly surface: Surface;
  readonly sag: number;
}

/** A form as a closed mesh, facets counter-clockwise seen from outside, each with the index of its face. */
export interface FormMesh {
  readonly positions: Float64Array;
  readonly triangles: Uint32Array;
  readonly faceOfTriangle: Uint32Array;
  readonly faces: readonly FormFace[];
}

/** A form's mesh in the coordinates of its own frame; like forms share it. */
export interface SweptMesh {
  readonly points: readonly Vector3[];
  readonly triangles: Uint32Array;
  readonly faceOfTriangle: Uint32Array;
  /** The sag of each face's chords, mm. */
  readonly sags: readonly number[];
}
