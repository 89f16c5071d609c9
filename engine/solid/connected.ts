import type { Solid } from './model.js';

/** How many separate pieces of material a solid is; a hollow within a piece is none. */
export function piecesOf({ positions: p, triangles: t }: Solid): number {
  const parent = Int32Array.from({ length: p.length / 3 }, (_, vertex) => vertex);
  const rootOf = (vertex: number): number => {
    let at = vertex;
    while (parent[at] !== at) at = parent[at] = parent[parent[at] ?? at] ?? at;
    return at;
  };
  for (let i = 0; i < t.length; i += 3) {
    const a = rootOf(t[i] ?? 0);
    parent[rootOf(t[i + 1] ?? 0)] = a;
    parent[rootOf(t[i + 2] ?? 0)] = a;
  }
  // The skin of a hollow faces inward, so its volume counts less than nought.
  const volumes = new Map<number, number>();
  for (let i = 0; i < t.length; i += 3) {
    const [a, b, c] = [t[i] ?? 0, t[i + 1] ?? 0, t[i + 2] ?? 0].map((vertex) => 3 * vertex) as [number, number, number];
    const at = (k: number): number => p[k] ?? 0;
    const six =
      at(a) * (at(b + 1) * at(c + 2) - at(b + 2) * at(c + 1)) + at(a + 1) * (at(b + 2) * at(c) - at(b) * at(c + 2)) + at(a + 2) * (at(b) * at(c + 1) - at(b + 1) * at(c));
    const root = rootOf(t[i] ?? 0);
    volumes.set(root, (volumes.get(root) ?? 0) + six);
  }
  return [...volumes.values()].filter((volume) => volume > 0).length;
}
