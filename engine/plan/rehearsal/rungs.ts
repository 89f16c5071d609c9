import { scale } from '../../geometry/vector.js';
import type { Vector2 } from '../../geometry/vector.js';
import type { CountersinkSize, Cut, HoleSize, Phrase } from '../../part/cut.js';
import type { Form } from '../../part/form.js';
import type { Cutter, Operation, Part } from '../../part/part.js';
import { movedForm } from '../../part/moved.js';
import type { DepthLadder, DrillLadder, Ladder } from './ladder.js';
import { inTrial } from './side-by-side.js';

/** The rungs of a ladder by trial: the first trial has the part's own size. */
export function rungsByTrial(ladder: Ladder): readonly number[] {
  const own = ladder.kind === 'drills' ? ladder.rungs.findIndex(({ chosen }) => chosen) : ladder.rungs.length - 1;
  return [own, ...ladder.rungs.flatMap((_, i) => (i === own ? [] : [i]))];
}

/** What a later trial has instead of a cut of the first, and with which cutter. */
interface RungCut {
  readonly of: string;
  readonly cutter: (first: Cutter) => Cutter;
  readonly change: (copy: Cut) => Cut;
}

/**
 * A piece with trials side by side whose later trials have the other rungs of a ladder: each in an operation of its own after
 * that of the first, as far as there are numbers between, and with its size said at its place.
 * @returns undefined where the cut that the ladder is about is not on the piece, or not of a shape that can be made in steps.
 */
export function withRungs(piece: Part, ladder: Ladder): Part | undefined {
  const order = rungsByTrial(ladder);
  let made: Part | undefined = piece;
  for (const [i, rung] of order.entries()) {
    if (i === 0 || made === undefined) continue;
    const found = ladder.kind === 'drills' ? drillRung(piece, ladder, rung) : depthRung(piece, ladder, rung);
    made = found === undefined ? undefined : rungIn(made, ladder, found, i + 1);
  }
  return made;
}

function rungIn(piece: Part, ladder: Ladder, { of, cutter, change }: RungCut, trial: number): Part {
  const id = inTrial(of, trial);
  const isThread = (cut: Cut): boolean => ladder.kind === 'drills' && cut.repeats?.trial === trial && cut.sizes.some((size) => size.kind === 'tapping' && size.thread.designation === ladder.thread);
  const at = piece.operations.findIndex(({ cuts }) => cuts.some((cut) => cut.id === id));
  const first = piece.operations[at]!;
  const base = first.cuts.some((cut) => cut.id === of) ? first.number : piece.operations.find(({ cuts }) => cuts.some((cut) => cut.id === of))!.number;
  const changed = said(change(first.cuts.find((cut) => cut.id === id)!));
  const number = base + trial - 1;
  const free = number < (piece.operations.find((operation) => operation.number > base + trial - 2 && operation.number !== base)?.number ?? Infinity);
  const own: Operation = { ...first, number, title: `${first.title}, rung ${trial}`, cutter: cutter(first.cutter), cuts: [changed] };
  const operations = piece.operations.flatMap((operation): Operation[] => {
    const cuts = operation.cuts.map((cut) => (cut.id === id ? changed : isThread(cut) ? said(cut) : cut));
    if (operation !== first || !free) return [{ ...operation, cuts }];
    return [{ ...operation, cuts: cuts.filter((cut) => cut.id !== id) }, own];
  });
  return { ...piece, operations: [...operations].sort((a, b) => a.number - b.number) };
}

/** A cut whose sizes are its own. */
function said(cut: Cut): Cut {
  const { repeats, ...rest } = cut;
  return repeats === undefined ? cut : rest;
}

function drillRung(piece: Part, { thread, operation, rungs }: DrillLadder, i: number): RungCut | undefined {
  const { drill } = rungs[i]!;
  const points = piece.operations.filter(({ number }) => number === operation).flatMap(({ cuts }) => cuts.flatMap(({ sizes }) => sizes.flatMap((size) => (size.kind === 'tapping' && size.thread.designation === thread ? size.points : []))));
  const isUnder = (size: Cut['sizes'][number]): size is HoleSize => size.kind === 'hole' && size.finish === 'drilled' && size.points.some((point) => points.some((other) => point.every((value, k) => Math.abs(value - other[k]!) < 1e-6)));
  const cut = piece.operations.flatMap(({ cuts }) => cuts).find(({ sizes, repeats }) => repeats === undefined && sizes.some(isUnder));
  const hole = cut?.sizes.find(isUnder);
  if (cut === undefined || hole === undefined) return undefined;
  const [from, to] = [hole.diameter.value / 2, drill.diameter / 2];
  const instruction: Phrase = [`Rung: drill ${drill.name}, `, { length: drill.diameter, sign: 'diameter' }, '; else as trial 1.'];
  return {
    of: cut.id,
    cutter: (first) => ({ ...first, name: hole.tool !== undefined && first.name.includes(hole.tool) ? first.name.replace(hole.tool, drill.name) : `drill ${drill.name}`, diameter: drill.diameter }),
    change: (copy) => ({
      ...copy,
      forms: copy.forms.map((form) => asWide(form, from, to)),
      sizes: copy.sizes.map((size) => (size.kind === 'hole' ? { ...size, diameter: { value: drill.diameter, purpose: size.diameter.purpose }, tool: drill.name } : size)),
      instruction,
    }),
  };
}

/** A turned form with another radius in place of one; a point keeps its angle. */
function asWide(form: Form, from: number, to: number): Form {
  if (form.kind !== 'revolution') return form;
  const isWall = ([r]: Vector2): boolean => Math.abs(r - from) < 1e-6;
  const corners = form.outline.map((segment) => segment.from);
  const moved = corners.map((corner, i): Vector2 => {
    if (isWall(corner)) return [to, corner[1]];
    const wall = [corners[(i + 1) % corners.length]!, corners[(i + corners.length - 1) % corners.length]!].find(isWall);
    return corner[0] > 1e-9 || wall === undefined ? corner : [corner[0], wall[1] + ((corner[1] - wall[1]) * to) / from];
  });
  return { ...form, outline: form.outline.map((segment, i) => ({ ...segment, from: moved[i]!, to: moved[(i + 1) % moved.length]! })) };
}

function depthRung(piece: Part, { operation, name, angle, rungs }: DepthLadder, i: number): RungCut | undefined {
  const { diameter } = rungs[i]!;
  const isMouth = (size: Cut['sizes'][number]): size is CountersinkSize => size.kind === 'countersink';
  const cut = piece.operations.find(({ number }) => number === operation)?.cuts.find((each) => each.repeats === undefined && each.name === name && each.sizes.some(isMouth));
  const mouth = cut?.sizes.find(isMouth);
  if (cut === undefined || mouth === undefined) return undefined;
  const short = (mouth.diameter.value - diameter) / 2 / Math.tan((angle * Math.PI) / 360);
  const out = scale(mouth.direction, -short);
  return {
    of: cut.id,
    cutter: (first) => first,
    change: (copy) => ({
      ...copy,
      forms: copy.forms.map((form) => movedForm(form, out)),
      sizes: copy.sizes.map((size) => (isMouth(size) ? { ...size, diameter: { value: diameter, purpose: size.diameter.purpose } } : size)),
      instruction: ['Rung: stop ', { length: short }, ' short of the depth of trial 1, at a mouth of ', { length: diameter, sign: 'diameter' }, '.'],
    }),
  };
}
