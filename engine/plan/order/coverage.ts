/** Lines across and up that part a plane into cells. */
export interface Grid {
  readonly across: readonly number[];
  readonly up: readonly number[];
}

type Point = readonly [number, number];

/** For each cell, row after row, whether its middle lies in one of the triangles. */
export function coverage({ across, up }: Grid, triangles: readonly (readonly Point[])[]): readonly boolean[] {
  const columns = across.length - 1;
  const covered = new Array<boolean>(Math.max(0, columns * (up.length - 1))).fill(false);
  for (const corners of triangles) {
    const [left, right] = [Math.min(...corners.map(([s]) => s)), Math.max(...corners.map(([s]) => s))];
    const [bottom, top] = [Math.min(...corners.map(([, z]) => z)), Math.max(...corners.map(([, z]) => z))];
    for (let r = 0; r + 1 < up.length; r += 1) {
      const z = (up[r]! + up[r + 1]!) / 2;
      if (z < bottom || z > top) continue;
      for (let c = 0; c < columns; c += 1) {
        const s = (across[c]! + across[c + 1]!) / 2;
        if (s >= left && s <= right && covered[r * columns + c] === false && holds(corners, s, z)) covered[r * columns + c] = true;
      }
    }
  }
  return covered;
}

function holds(corners: readonly Point[], s: number, z: number): boolean {
  let sign = 0;
  for (let i = 0; i < 3; i += 1) {
    const [a, b] = [corners[i]!, corners[(i + 1) % 3]!];
    const side = (b[0] - a[0]) * (z - a[1]) - (b[1] - a[1]) * (s - a[0]);
    if (Math.abs(side) < 1e-12) continue;
    if (sign !== 0 && Math.sign(side) !== sign) return false;
    sign = Math.sign(side);
  }
  return true;
}
