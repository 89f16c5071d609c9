import { cross, dot, length, scale, subtract, unit, type Vector3 } from '../geometry/vector.js';
import type { Feature } from './hand-features.js';
import { apply, axisReflections, multiply, transpose, turnTo, type Matrix3 } from './matrix.js';
import type { MassProperties } from './measure.js';

/** No more maps than this are tried on the strength of two features. */
const MOST = 2000;

/**
 * The maps, each turning a right hand into a left one, under which a solid could coincide with itself: the 24 of the
 * axes, and those that take two of its directions to two like them. Two directions that are not parallel fix such a map, so
 * the two of the rarest kinds are enough, whatever symmetry the second moments have; where all directions are
 * parallel, the solid is turned, and a mirror through its axis is added. Moments leave out what cannot be.
 */
export function handCandidates(
  features: readonly Feature[],
  mass: MassProperties,
): { readonly ofAxes: readonly Matrix3[]; readonly ofFeatures: readonly Matrix3[] } {
  const ofAxes = axisReflections();
  const candidates: Matrix3[] = [];
  const [first, second] = rarestPair(directionsByKind(features));
  const lead = first?.[0];
  if (lead !== undefined && second === undefined) candidates.push(mirrorThrough(lead));
  if (first !== undefined && second !== undefined) {
    for (const map of pairMaps(first, second)) if (keepsMoments(map, mass)) candidates.push(map);
  }
  return { ofAxes, ofFeatures: distinct([...ofAxes, ...candidates]).slice(ofAxes.length) };
}

/** The different directions of each kind of feature, the kinds with fewest first. */
function directionsByKind(features: readonly Feature[]): Vector3[][] {
  const kinds = new Map<string, Map<string, Vector3>>();
  for (const { kind, direction, signed } of features) {
    const own = kinds.get(kind) ?? new Map<string, Vector3>();
    kinds.set(kind, own);
    for (const way of signed ? [direction] : [direction, scale(direction, -1)]) {
      own.set(way.map((value) => Math.round(value * 1e6) + 0).join(' '), way);
    }
  }
  return [...kinds.values()].map((own) => [...own.values()]).sort((a, b) => a.length - b.length);
}

/** The two kinds with fewest directions whose first are not parallel; one kind may serve twice, led by another direction. */
function rarestPair(kinds: readonly Vector3[][]): [Vector3[]?, Vector3[]?] {
  const first = kinds[0];
  const lead = first?.[0];
  if (first === undefined || lead === undefined) return [];
  for (const kind of kinds) {
    const other = kind.find((direction) => length(cross(direction, lead)) > 0.05);
    if (other !== undefined) return [first, [other, ...kind.filter((direction) => direction !== other)]];
  }
  return [first];
}

function pairMaps(first: readonly Vector3[], second: readonly Vector3[]): Matrix3[] {
  const [a, b] = [first[0], second[0]];
  if (a === undefined || b === undefined) return [];
  const maps: Matrix3[] = [];
  const from = triple(a, b, 1);
  for (const a2 of first) {
    for (const b2 of second) {
      if (Math.abs(dot(a2, b2) - dot(a, b)) > 0.02) continue;
      maps.push(turnTo(from, triple(a2, b2, -1)));
      if (maps.length >= MOST) return maps;
    }
  }
  return maps;
}

/** Three directions at right angles: `a`, the rest of `b`, and the third by the right hand (sense 1) or the left. */
function triple(a: Vector3, b: Vector3, sense: 1 | -1): Matrix3 {
  const second = unit(subtract(b, scale(a, dot(a, b))));
  return [a, second, scale(cross(a, second), sense)];
}

function mirrorThrough(axis: Vector3): Matrix3 {
  const other: Vector3 = Math.abs(axis[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0];
  const n = unit(cross(axis, other));
  const row = (k: 0 | 1 | 2): Vector3 => [
    (k === 0 ? 1 : 0) - 2 * n[k] * n[0],
    (k === 1 ? 1 : 0) - 2 * n[k] * n[1],
    (k === 2 ? 1 : 0) - 2 * n[k] * n[2],
  ];
  return [row(0), row(1), row(2)];
}

function keepsMoments(map: Matrix3, mass: MassProperties): boolean {
  const turned = multiply(multiply(map, mass.moments), transpose(map));
  const size = Math.max(...mass.moments.map((row) => length(row)));
  return turned.every((row, k) => length(subtract(row, mass.moments[k] ?? row)) <= 0.01 * size);
}

function distinct(maps: readonly Matrix3[]): Matrix3[] {
  const probe: Vector3[] = [[1, 0, 0], [0, 1, 0]];
  const seen = new Map<string, Matrix3>();
  for (const map of maps) {
    const key = probe.flatMap((v) => apply(map, v)).map((value) => Math.round(value * 1e5) + 0).join(' ');
    if (!seen.has(key)) seen.set(key, map);
  }
  return [...seen.values()];
}
