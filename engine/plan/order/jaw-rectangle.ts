import { dot, type Vector3 } from '../../geometry/vector.js';
import type { Corners } from './bands.js';
import { coverage, type Grid } from './coverage.js';

/** Where jaws press, seen square to them: along them from `from` to `to`, up from `low` to `high`, mm. */
export interface Rectangle {
  readonly from: number;
  readonly to: number;
  readonly low: number;
  readonly high: number;
  /** Area on which both jaws really touch within it, mm2. */
  readonly contact: number;
}

/** So many lines each way at most: faces with straight edges have fewer, and come out exact. */
const most = 36;

/**
 * The rectangle with the most contact that two jaws can have on two faces, so that nothing in it is cut while they hold. A
 * groove across the faces is no harm: jaws bridge it. Its sides lie on corners of the faces; where these have many, on lines
 * that part their extent in 35: so far the figure may be off.
 * @param before the two faces when the jaws close; `after`: what is left of them. `along`: along the jaws.
 */
export function jawRectangleOn(before: readonly (readonly Corners[])[], after: readonly (readonly Corners[])[], along: Vector3): Rectangle | undefined {
  const flatten = (faces: readonly (readonly Corners[])[]) => faces.map((triangles) => triangles.map((corners) => corners.map((corner): readonly [number, number] => [dot(corner, along), corner[2]])));
  const [then, left] = [flatten(before), flatten(after)];
  const points = [...then, ...left].flat(2);
  const grid: Grid = { across: linesOf(points.map(([s]) => s)), up: linesOf(points.map(([, z]) => z)) };
  const there = both(then.map((triangles) => coverage(grid, triangles)));
  const kept = both(left.map((triangles) => coverage(grid, triangles)));
  return bestOf(grid, there, there.map((is, i) => is && kept[i] !== true));
}

const both = ([first, ...others]: readonly (readonly boolean[])[]): readonly boolean[] => (first ?? []).map((is, i) => is && others.every((other) => other[i] === true));

function bestOf({ across, up }: Grid, good: readonly boolean[], bad: readonly boolean[]): Rectangle | undefined {
  const columns = across.length - 1;
  let best: Rectangle | undefined;
  for (let low = 0; low + 1 < up.length; low += 1) {
    const [area, cut] = [new Float64Array(columns), new Uint8Array(columns)];
    for (let high = low; high + 1 < up.length; high += 1) {
      let [start, sum, lastGood] = [-1, 0, -1];
      for (let c = 0; c <= columns; c += 1) {
        const cell = high * columns + c;
        if (c < columns) {
          if (good[cell] === true) area[c]! += (across[c + 1]! - across[c]!) * (up[high + 1]! - up[high]!);
          if (bad[cell] === true) cut[c] = 1;
        }
        if (c < columns && cut[c] === 0) {
          if (area[c]! > 0) {
            if (start < 0) start = c;
            lastGood = c;
            sum += area[c]!;
          }
        } else {
          if (start >= 0 && sum > (best?.contact ?? 0) + 1e-6) best = { from: across[start]!, to: across[lastGood + 1]!, low: up[low]!, high: up[high + 1]!, contact: sum };
          [start, sum] = [-1, 0];
        }
      }
    }
  }
  return best;
}

function linesOf(values: readonly number[]): readonly number[] {
  const sorted = [...values].sort((a, b) => a - b).filter((value, i, all) => i === 0 || value - all[i - 1]! > 1e-3);
  if (sorted.length <= most) return sorted;
  const [low, high] = [sorted[0]!, sorted.at(-1)!];
  return Array.from({ length: most }, (_, i) => low + ((high - low) * i) / (most - 1));
}
