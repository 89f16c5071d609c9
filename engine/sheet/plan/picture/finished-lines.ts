import type { Curve2 } from '../../../geometry/curve.js';
import type { Vector2 } from '../../../geometry/vector.js';
import { scaleCurve } from '../../../lettering/place-curve.js';
import type { Item } from '../../drawing.js';
import { chainOf } from '../../say/extremes.js';
import { pointOf, portion } from '../../views/clip.js';
import { boxAround } from '../../place/plane.js';
import { CoveredCells } from './covered-cells.js';

/** How finely a line is looked at, and the shortest stretch that still shows its dashes and dots; mm. */
const step = 0.25;
const shortest = 3.4;

/** Cells to each side within which a line counts as drawn already: by an outline of the work; by another line of the same kind. */
const sameLine = 2;
const tooClose = 4;

/** Covered stretches up to so long are but crossings, mm: the line runs on through them. */
const crossing = 1.6;

/**
 * The edges of the finished part that a picture of the work shows where there still is metal over them: what lies on a line
 * of the work, what is too short to show its dashes, and what runs close beside a longer one, is left out.
 * @param edges what is seen of the finished part, at a size of `factor` paper mm for one.
 * @param drawn outlines of the work, paper mm.
 */
export function finishedLines(edges: readonly Curve2[], factor: number, drawn: readonly Curve2[], isCovered: (at: Vector2) => boolean, group: string): readonly Item[] {
  const onPaper = edges.map((edge) => scaleCurve(edge, factor)).map((curve) => ({ curve, size: lengthOf(curve) }));
  const box = boxAround(onPaper.flatMap(({ curve }) => chainOf(curve)));
  const cells = new CoveredCells(box);
  for (const curve of drawn) cells.add(curve);
  const kept = new CoveredCells(box);
  const items: Item[] = [];
  for (const { curve, size } of onPaper.filter((each) => each.size >= shortest).sort((a, b) => b.size - a.size)) {
    const own = freeStretches(curve, size, (at) => cells.near(at, sameLine) || kept.near(at, tooClose), isCovered);
    for (const each of own) kept.add(each);
    items.push(...own.map((each): Item => ({ kind: 'stroke', group, role: 'finished', curve: each })));
  }
  return items;
}

const lengthOf = (curve: Curve2): number => {
  const chain = chainOf(curve);
  return chain.slice(1).reduce((sum, [x, y], i) => sum + Math.hypot(x - chain[i]![0], y - chain[i]![1]), 0);
};

/** The stretches of a curve that run free of lines, but for crossings, and that nothing covers. */
function freeStretches(curve: Curve2, size: number, isDrawn: (at: Vector2) => boolean, isCovered: (at: Vector2) => boolean): readonly Curve2[] {
  const count = Math.ceil(size / step);
  const drawn: boolean[] = [];
  const open: boolean[] = [];
  for (let i = 0; i <= count; i += 1) {
    const at = pointOf(curve, i / count);
    drawn.push(isDrawn(at));
    open.push(!isCovered(at));
  }
  const most = Math.ceil(crossing / step);
  for (const { from, to } of runsOf(drawn)) if (from > 0 && to < count && to - from < most) drawn.fill(false, from, to + 1);
  return runsOf(drawn.map((each, i) => !each && open[i]!))
    .filter(({ from, to }) => ((to - from) / count) * size >= shortest)
    .map(({ from, to }) => (from === 0 && to === count ? curve : portion(curve, from / count, to / count)));
}

/** Where a row of answers is true, from the first to the last of each stretch. */
function runsOf(answers: readonly boolean[]): readonly { readonly from: number; readonly to: number }[] {
  const runs: { from: number; to: number }[] = [];
  answers.forEach((answer, i) => {
    const last = runs[runs.length - 1];
    if (!answer) return;
    if (last !== undefined && last.to === i - 1) last.to = i;
    else runs.push({ from: i, to: i });
  });
  return runs;
}
