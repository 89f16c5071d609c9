/**
 * Joins vertices nearer than `reach` mm that share an edge, where the mesh stays closed: the noise of 32-bit places leaves
 * pairs where several forms meet in one point. Gives the triangles that are left, which triangle each was, and the vertices
 * that took others in. `positions` is not changed.
 */
export function collapseShortEdges(
  positions: Float64Array,
  triangles: Uint32Array,
  reach: number,
): { readonly triangles: Uint32Array; readonly kept: readonly number[]; readonly joined: ReadonlySet<number> } {
  const corners = triangles.slice();
  const short = shortEdges(positions, corners, reach);
  const joined = new Set<number>();
  if (short.length > 0) {
    const mesh = new Collapsing(corners);
    for (const [from, to] of short) {
      const [kept, lost] = [mesh.current(from), mesh.current(to)];
      if (kept !== lost && mesh.collapse(kept, lost)) joined.add(kept);
    }
  }
  const kept: number[] = [];
  for (let triangle = 0; triangle < corners.length / 3; triangle += 1) {
    if (corners[3 * triangle] !== corners[3 * triangle + 1]) kept.push(triangle);
  }
  const left = new Uint32Array(3 * kept.length);
  kept.forEach((triangle, i) => {
    left.set(corners.subarray(3 * triangle, 3 * triangle + 3), 3 * i);
  });
  return { triangles: left, kept, joined };
}

function shortEdges(positions: Float64Array, corners: Uint32Array, reach: number): [number, number][] {
  const found: [number, number][] = [];
  for (let i = 0; i < corners.length; i += 3) {
    for (let k = 0; k < 3; k += 1) {
      const from = corners[i + k] ?? 0;
      const to = corners[i + ((k + 1) % 3)] ?? 0;
      if (from > to) continue;
      const x = (positions[3 * from] ?? 0) - (positions[3 * to] ?? 0);
      const y = (positions[3 * from + 1] ?? 0) - (positions[3 * to + 1] ?? 0);
      const z = (positions[3 * from + 2] ?? 0) - (positions[3 * to + 2] ?? 0);
      if (x * x + y * y + z * z < reach * reach) found.push([from, to]);
    }
  }
  return found;
}

/** A mesh whose edges are taken out one by one; a triangle that is gone has its three corners alike. */
class Collapsing {
  readonly #around = new Map<number, number[]>();
  readonly #into = new Map<number, number>();

  constructor(readonly corners: Uint32Array) {
    corners.forEach((vertex, corner) => {
      const list = this.#around.get(vertex);
      const triangle = Math.floor(corner / 3);
      if (list === undefined) this.#around.set(vertex, [triangle]);
      else list.push(triangle);
    });
  }

  /** The vertex that has taken `vertex` in, or itself. */
  current(vertex: number): number {
    const next = this.#into.get(vertex);
    return next === undefined ? vertex : this.current(next);
  }

  /** Moves `lost` into `kept`; false, and nothing done, where that would pinch the surface. */
  collapse(kept: number, lost: number): boolean {
    const nearKept = this.#neighbours(kept);
    const nearLost = this.#neighbours(lost);
    if (!nearKept.has(lost)) return false;
    const common = [...nearKept].filter((vertex) => nearLost.has(vertex));
    if (common.length !== 2) return false;
    for (const triangle of this.#around.get(lost) ?? []) {
      const own = this.corners.subarray(3 * triangle, 3 * triangle + 3);
      if (own.includes(kept)) {
        for (const vertex of own) this.#drop(vertex, triangle);
        own.fill(kept);
      } else {
        own[own.indexOf(lost)] = kept;
        this.#around.get(kept)?.push(triangle);
      }
    }
    this.#around.delete(lost);
    this.#into.set(lost, kept);
    return true;
  }

  #drop(vertex: number, triangle: number): void {
    const list = this.#around.get(vertex);
    const at = list?.indexOf(triangle) ?? -1;
    // The list that is being walked through belongs to a vertex that goes anyway.
    if (list !== undefined && at >= 0) this.#around.set(vertex, [...list.slice(0, at), ...list.slice(at + 1)]);
  }

  #neighbours(vertex: number): Set<number> {
    const near = new Set<number>();
    for (const triangle of this.#around.get(vertex) ?? []) {
      for (const corner of this.corners.subarray(3 * triangle, 3 * triangle + 3)) near.add(corner);
    }
    near.delete(vertex);
    return near;
  }
}
