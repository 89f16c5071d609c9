import type { Vector3 } from '../geometry/vector.js';

/**
 * Joins sections, each a ring of as many points, by walls from one to the next. With `closed` the last section is joined
 * to the first; otherwise first and last are filled. Gives triangles as indices into the sections' points taken in
 * turn (the points of the first section, then those of the second, and so on); walls without area are left out.
 */
export type Sweeper = (sections: readonly (readonly Vector3[])[], closed: boolean) => Uint32Array;

type Point = number[];
interface Slice {
  readonly edges: readonly unknown[];
}
interface Modelling {
  readonly extrudeFromSlices: (
    options: {
      numberOfSlices: number;
      capStart: boolean;
      capEnd: boolean;
      close: boolean;
      repair: boolean;
      callback: (progress: number, index: number) => Slice | undefined;
    },
    base: Slice,
  ) => { readonly polygons: readonly { readonly vertices: readonly Point[] }[] };
  readonly fromPoints: (points: readonly Point[]) => Slice;
}

/** Loads just the two modules of the modelling library that are needed: half the time of the whole. */
export async function loadSweeper(): Promise<Sweeper> {
  const [extrude, slice] = await Promise.all([
    import('@jscad/modeling/src/operations/extrusions/extrudeFromSlices.js'),
    import('@jscad/modeling/src/operations/extrusions/slice/fromPoints.js'),
  ]);
  // The library's declarations describe ES modules, but its files are CommonJS: the default is the function itself.
  const modelling = {
    extrudeFromSlices: extrude.default as unknown as Modelling['extrudeFromSlices'],
    fromPoints: slice.default as unknown as Modelling['fromPoints'],
  };
  return (sections, closed) => sweep(modelling, sections, closed);
}

function sweep(modelling: Modelling, sections: readonly (readonly Vector3[])[], closed: boolean): Uint32Array {
  // The library hands back the very points that it was given, so that each is known by itself and not by its place.
  const indices = new Map<Point, number>();
  const slices = sections.map((section) => {
    const points = section.map((point): Point => [...point]);
    for (const point of points) indices.set(point, indices.size);
    return modelling.fromPoints(points);
  });
  const base = slices[0];
  if (base === undefined) throw new RangeError('a sweep needs two sections or more');
  const body = modelling.extrudeFromSlices(
    {
      numberOfSlices: slices.length,
      capStart: !closed,
      capEnd: !closed,
      close: closed,
      repair: false,
      callback: (_, index) => slices[index],
    },
    base,
  );
  const triangles: number[] = [];
  for (const polygon of body.polygons) {
    const corners = polygon.vertices.map((vertex) => indices.get(vertex));
    if (corners.length !== 3 || corners.includes(undefined)) throw new Error('the sweep made a polygon of its own');
    triangles.push(...(corners as number[]));
  }
  return Uint32Array.from(triangles);
}
