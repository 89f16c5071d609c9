import { vectorOf } from '../../part/author/directions.js';
import type { CountersinkSize, CounterboreSize, FinishDepth, HoleSize, Size, TappingSize } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import { dot, type Vector2, type Vector3 } from '../../geometry/vector.js';
import { laidOpen } from '../views/axis-marks.js';
import { isCutAway } from '../views/thread-lines.js';
import { leanInWords } from '../../part/author/cuts/hole.js';
import { alongPaper, circleAt } from '../views/marks.js';
import type { ViewPlan } from '../views/plan.js';
import { finishLines } from './finish-words.js';
import type { Home, PrintItem, Target } from './item.js';
import { angleText, countText, limitsOf, signs, sizeText, type Speech } from './texts.js';

type AtHole = HoleSize | TappingSize | CountersinkSize | CounterboreSize;

const isAtHole = (size: Size): size is AtHole =>
  size.kind === 'hole' || size.kind === 'tapping' || size.kind === 'countersink' || size.kind === 'counterbore';

const keyOf = (size: AtHole): string =>
  `${size.direction.map((value) => value.toFixed(6)).join(' ')} | ${size.points
    .map((point) => point.map((value) => value.toFixed(6)).join(' '))
    .sort()
    .join(' ; ')}`;

/** One callout for each group of holes, with all that is done to them. */
export function holeItems(part: Part, speech: Speech): readonly PrintItem[] {
  const groups = new Map<string, { sizes: AtHole[]; textures: Map<AtHole, number>; finishes: Map<AtHole, FinishDepth> }>();
  for (const operation of part.operations)
    for (const cut of operation.cuts)
      for (const size of cut.sizes) {
        if (!isAtHole(size)) continue;
        const key = keyOf(size);
        const group = groups.get(key) ?? { sizes: [], textures: new Map<AtHole, number>(), finishes: new Map<AtHole, FinishDepth>() };
        group.sizes.push(size);
        const texture = Object.values(cut.faces).find((face) => face.texture !== undefined)?.texture;
        if (texture !== undefined) group.textures.set(size, texture);
        if (cut.finishDepth !== undefined) group.finishes.set(size, cut.finishDepth);
        groups.set(key, group);
      }
  return mirroredTogether([...groups.values()], speech).map((group) => holeItem(group, speech));
}

interface Group {
  readonly sizes: readonly AtHole[];
  readonly textures: ReadonlyMap<AtHole, number>;
  readonly finishes: ReadonlyMap<AtHole, FinishDepth>;
  readonly both: boolean;
}

/** Two like groups that face each other across a part, hole over hole, share one callout. */
function mirroredTogether(groups: readonly Omit<Group, 'both'>[], speech: Speech): readonly Group[] {
  const result: Group[] = [];
  const used = new Set<number>();
  groups.forEach((group, i) => {
    if (used.has(i)) return;
    const twin = groups.findIndex((other, j) => j > i && !used.has(j) && faceEachOther(group, other, speech));
    if (twin >= 0) used.add(twin);
    result.push({ ...group, both: twin >= 0 });
  });
  return result;
}

function faceEachOther(a: Omit<Group, 'both'>, b: Omit<Group, 'both'>, speech: Speech): boolean {
  const [first, second] = [a.sizes[0]!, b.sizes[0]!];
  if (dot(first.direction, second.direction) > -1 + 1e-9 || first.points.length !== second.points.length) return false;
  if (a.sizes.length !== b.sizes.length || !a.sizes.every((size, i) => linesOf(size, speech).join(' ') === linesOf(b.sizes[i]!, speech).join(' '))) return false;
  const flat = (point: Vector3): string => {
    const along = dot(point, first.direction);
    return point.map((value, i) => (value - along * first.direction[i as 0 | 1 | 2]).toFixed(5).replace('-0.00000', '0.00000')).join(' ');
  };
  const places = new Set(first.points.map(flat));
  return second.points.every((point) => places.has(flat(point)));
}

const order: Readonly<Record<AtHole['kind'], number>> = { hole: 0, tapping: 1, counterbore: 2, countersink: 3 };

function holeItem({ sizes, textures, finishes, both }: Group, speech: Speech): PrintItem {
  const sorted = [...sizes].sort((a, b) => order[a.kind] - order[b.kind]);
  const first = sorted[0]!;
  const count = first.points.length * (both ? 2 : 1);
  const spoken = sorted.map((size, i) => {
    const texture = textures.get(size);
    const each = i === 0 && both ? [`${first.points.length} each side`] : [];
    const pieces = [...linesOf(size, speech), ...(texture === undefined ? [] : [`Ra ${texture}`]), ...finishLines(finishes.get(size), speech)];
    pieces[0] = `${i === 0 ? countText(count) : ''}${pieces[0]!}`;
    return [...folded(pieces), ...each];
  });
  const lines = spoken.flat();
  const also = sorted.slice(1).map(({ cut }, i) => ({ about: cut, line: spoken.slice(0, i + 1).flat().length }));
  const { pitchCircle, lean } = first;
  if (lean !== undefined) lines.push(leanInWords(lean));
  if (pitchCircle !== undefined) {
    lines.push(`equally spaced on ${sizeText(pitchCircle.diameter, speech, signs.diameter)}`);
    if (pitchCircle.start !== 0) lines.push(`first at ${angleText(pitchCircle.start)} from ${pitchCircle.zeroName.toUpperCase()}`);
  }
  const hole = sorted.find((size) => size.kind === 'hole');
  const radii = sorted.flatMap((size) => (size.kind === 'tapping' ? [] : [size.diameter.value / 2]));
  const through = hole !== undefined && hole.depth === undefined && hole.into === undefined;
  return {
    id: `holes ${sorted.map((size) => size.cut).join(' ')}`,
    about: first.cut,
    ...(also.length === 0 ? {} : { also }),
    lines,
    record: {
      kind: 'hole',
      feature: first.cut,
      count,
      measure: 'length',
      ...(hole === undefined ? {} : { nominal: hole.diameter.value, ...limitsOf(hole.diameter) }),
    },
    find: (plan) => holeHome(plan, first.points, first.direction, radii, through, pitchCircle !== undefined),
  };
}

/** Most characters that a line of a callout holds: short lines find room beside a view. */
const longest = 26;

/** Pieces set one after another on as few lines as hold them. */
function folded(pieces: readonly string[]): readonly string[] {
  const lines: string[] = [];
  for (const piece of pieces) {
    const last = lines[lines.length - 1];
    if (last !== undefined && last.length + piece.length + 1 <= longest) lines[lines.length - 1] = `${last} ${piece}`;
    else lines.push(piece);
  }
  return lines;
}

/** What is said of a size, in pieces that must each stand on one line. */
function linesOf(size: AtHole, speech: Speech): string[] {
  switch (size.kind) {
    case 'hole': {
      const tool = size.tool === undefined ? '' : ` (${size.tool})`;
      const depth =
        size.depth !== undefined
          ? `${signs.depth}${sizeText(size.depth, speech)}`
          : size.into === undefined
            ? 'THRU'
            : `into ${size.into}`;
      return [
        `${sizeText(size.diameter, speech, signs.diameter)}${tool}`,
        depth,
        ...(size.depth !== undefined && size.pointAngle === 180 ? ['flat bottom'] : []),
        ...(size.finish === 'reamed' ? ['ream'] : []),
      ];
    }
    case 'tapping':
      return [
        `${size.thread.designation}${size.thread.class === undefined ? '' : `-${size.thread.class}`}`,
        size.depth === undefined ? 'THRU' : `${signs.depth}${sizeText(size.depth, speech)}`,
      ];
    case 'counterbore':
      return [`${signs.counterbore}${sizeText(size.diameter, speech, signs.diameter)}`, `${signs.depth}${sizeText(size.depth, speech)}`];
    case 'countersink':
      return [`${signs.countersink}${sizeText(size.diameter, speech, signs.diameter)} x ${angleText(size.angle)}`];
  }
}

/** Holes are called out where they are seen round; failing that, where a section lays them open. */
function holeHome(plan: ViewPlan, points: readonly Vector3[], direction: Vector3, radii: readonly number[], through: boolean, onCircle: boolean): Home | undefined {
  const eye = vectorOf(plan.eye);
  const facing = -dot(direction, eye);
  const paper = (point: Vector3): Vector2 => [alongPaper(point, plan.right), alongPaper(point, plan.up)];
  if (Math.abs(Math.abs(facing) - 1) < 1e-9) {
    const targets: Target[] = [];
    if (facing < 0 && !through) return undefined;
    for (const point of points) {
      if (isCutAway(point, plan.section)) continue;
      const at = paper(point);
      const radius = circleAt(plan.view.curves, at, radii);
      if (radius !== undefined) targets.push({ at, radius, end: 'arrow' });
    }
    if (targets.length === 0) return undefined;
    return { kind: 'leader', cost: (facing > 0 ? 0 : 1.5) + (plan.section === undefined ? 0 : 1) + (targets.length < points.length ? 0.5 : 0), targets };
  }
  // A circle of holes is understood only where it is seen as a circle.
  if (onCircle) return undefined;
  const open = points.filter((point) => laidOpen({ from: point, to: point, direction, radius: 0, cut: '', kind: 'hole' }, plan.section));
  if (open.length === 0 || Math.abs(facing) > 1e-9) {
    if (Math.abs(facing) < 1e-9 || facing < 0) return undefined;
    // A leaning hole, seen slantwise from its entry side.
    return { kind: 'leader', cost: 3, targets: points.map((point) => ({ at: paper(point), radius: 0, end: 'dot' })) };
  }
  return { kind: 'leader', cost: 1.2, targets: open.flatMap((point) => openTargets(plan, paper(point), paper(direction), radii)) };
}

/** Where a hole that is laid open is pointed at: its mouth; where another cut took that away, the middle of its wall. */
function openTargets(plan: ViewPlan, mouth: Vector2, along: Vector2, radii: readonly number[]): readonly Target[] {
  const across: Vector2 = [-along[1], along[0]];
  const offset = (point: Vector2): Vector2 => [point[0] - mouth[0], point[1] - mouth[1]];
  const dot2 = (a: Vector2, b: Vector2): number => a[0] * b[0] + a[1] * b[1];
  const walls = plan.view.curves.flatMap(({ geometry, visible, name }): readonly (readonly [Vector2, Vector2])[] => {
    if (!visible || name !== undefined || geometry.kind !== 'line') return [];
    const sides = [geometry.from, geometry.to].map((end) => dot2(offset(end), across));
    const onWall = radii.some((radius) => sides.every((side) => Math.abs(Math.abs(side) - radius) < 1e-5));
    return onWall && dot2(offset(geometry.to), along) > -1e-5 ? [[geometry.from, geometry.to]] : [];
  });
  const begins = walls.some((ends) => ends.some((end) => Math.abs(dot2(offset(end), along)) < 1e-5));
  if (walls.length === 0 || begins) return [{ at: mouth, radius: 0, end: 'arrow' }];
  return walls.flatMap(([a, b]) => [0.5, 0.3, 0.7].map((share): Target => ({ at: [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share], radius: 0, end: 'arrow' })));
}
