import type { Frame } from '../../engine/geometry/frame.js';
import { dot, subtract, type Vector3 } from '../../engine/geometry/vector.js';
import { polygonOutline } from '../../engine/part/author/outlines.js';
import type { Cut } from '../../engine/part/cut.js';
import type { Form } from '../../engine/part/form.js';
import type { Operation, Part } from '../../engine/part/part.js';
import { reachOf } from '../../engine/plan/data/reaches.js';
import { machineFrame, type MachineFrame } from '../../engine/plan/machine-frame.js';
import { stockForms } from '../../engine/solid/build.js';
import { shapeBox, shapeVolume, type OpenCascade, type Shape } from './open-cascade.js';
import { formShape, formsToShape } from './open-cascade-forms.js';

/** A room that a tool goes through, as exact bodies, with what it belongs to. */
export interface ExactSweep {
  readonly operation: number;
  readonly cut: string;
  readonly tool: Shape;
  readonly holder?: Shape;
}

interface Box {
  readonly low: readonly number[];
  readonly high: readonly number[];
}

const reach = 400;
/** Tools and holders are taken to come from so high over the work, mm: above all pieces. */
const above = 150;
/** A drill comes out under a hole right through by its point of 118 degrees and half a millimetre. */
const through = (diameter: number): number => 0.3 * diameter + 0.5;
/** A cutter runs out of an open side by its own diameter; one that is not told has half an inch at most. */
const largestCutter = 12.7;

export const commonOf = (oc: OpenCascade, a: Shape, b: Shape): Shape => new oc['BRepAlgoAPI_Common_3'](a, b).Shape();
export const commonVolume = (oc: OpenCascade, a: Shape, b: Shape): number => Math.abs(shapeVolume(oc, commonOf(oc, a, b)));

/** A body taken to a place given by a frame, or from there into the frame's own coordinates. */
export function taken(oc: OpenCascade, shape: Shape, { origin, x, y, z }: Frame, way: 'to' | 'from'): Shape {
  const motion = new oc['gp_Trsf_1']();
  if (way === 'to') motion.SetValues(x[0], y[0], z[0], origin[0], x[1], y[1], z[1], origin[1], x[2], y[2], z[2], origin[2]);
  else motion.SetValues(x[0], x[1], x[2], -dot(x, origin), y[0], y[1], y[2], -dot(y, origin), z[0], z[1], z[2], -dot(z, origin));
  return new oc['BRepBuilderAPI_Transform_2'](shape, motion, true).Shape();
}

/** An empty body has no box. */
export const boxIn = (oc: OpenCascade, shape: Shape, frame: Frame): Box | undefined => (Math.abs(shapeVolume(oc, shape)) < 1e-6 ? undefined : shapeBox(oc, taken(oc, shape, frame, 'from')));

const boxForm = (frame: Frame, { low, high }: Box): Form => ({
  kind: 'prism', frame, low: low[2]!, high: high[2]!, lowFace: 'low', highFace: 'high',
  outline: polygonOutline([[low[0]!, low[1]!], [high[0]!, low[1]!], [high[0]!, high[1]!], [low[0]!, high[1]!]], ['a', 'b', 'c', 'd']),
});
const roundForm = (frame: Frame, [x, y]: readonly [number, number], radius: number, low: number, high: number): Form => ({
  kind: 'revolution',
  frame: { ...frame, origin: [0, 1, 2].map((i) => frame.origin[i]! + x * frame.x[i]! + y * frame.y[i]!) as unknown as Vector3 },
  outline: polygonOutline([[0, low], [radius, low], [radius, high], [0, high]], ['a', 'b', 'c', 'd']),
});

/** The work of a part before each of its operations, and cut by cut through them, as exact bodies. */
export class ExactWork {
  private readonly before = new Map<number, Shape>();
  private readonly swept = new Map<number, readonly ExactSweep[]>();
  constructor(private readonly oc: OpenCascade, private readonly part: Part) {}

  beforeOperation(number: number): Shape {
    const known = this.before.get(number);
    if (known !== undefined) return known;
    const at = this.part.operations.findIndex((operation) => operation.number === number);
    const earlier = this.part.operations[at - 1];
    const made = earlier === undefined ? formsToShape(this.oc, stockForms(this.part), []) : earlier.cuts.reduce((work, cut) => this.less(work, cut), this.beforeOperation(earlier.number));
    this.before.set(number, made);
    return made;
  }

  less(work: Shape, { forms }: Cut): Shape {
    return forms.reduce<Shape>((left, form) => new this.oc['BRepAlgoAPI_Cut_3'](left, formShape(this.oc, form, reach)).Shape(), work);
  }

  /** Beyond each side of the work that a milled form comes out at: the form moved on that way, as far as a cutter runs out. */
  private runOuts(form: Form, frame: Frame, chips: Box, work: Box, diameter: number, top: number): readonly Shape[] {
    if (form.kind === 'half-space') return [];
    return [0, 1].flatMap((axis) =>
      ([1, -1] as const).flatMap((sense): Shape[] => {
        const side = sense > 0 ? work.high[axis]! : work.low[axis]!;
        if (Math.abs((sense > 0 ? chips.high[axis]! : chips.low[axis]!) - side) > 1e-3) return [];
        const across = axis === 0 ? 1 : 0;
        const [low, high] = [[0, 0, chips.low[2]!], [0, 0, top]] as [number[], number[]];
        [low[axis], high[axis]] = sense > 0 ? [side, side + diameter] : [side - diameter, side];
        [low[across], high[across]] = [chips.low[across]!, chips.high[across]!];
        const slab = formShape(this.oc, boxForm(frame, { low, high }), reach);
        const way = axis === 0 ? frame.x : frame.y;
        return [0.5, 1].map((share) => {
          const by = sense * share * diameter;
          const moved: Form = { ...form, frame: { ...form.frame, origin: form.frame.origin.map((value, i) => value + by * way[i]!) as unknown as Vector3 } };
          return commonOf(this.oc, formShape(this.oc, moved, reach), slab);
        });
      }),
    );
  }

  /**
   * What the tools of an operation go through, cut by cut. A drill: its own round, from where its point comes out up to the top.
   * A milling cutter: the form of the cut, as far as the chips and a diameter beside them, up to the top, and its holder over
   * the chips. On the lathe, where all turns: the form of the cut along the length of the chips, out beyond the work, or from
   * the end where it is in the middle.
   */
  sweepsOf(operation: Operation): readonly ExactSweep[] {
    const known = this.swept.get(operation.number) ?? this.sweep(operation);
    this.swept.set(operation.number, known);
    return known;
  }

  private sweep(operation: Operation): readonly ExactSweep[] {
    const { oc, part } = this;
    const setUp = part.setUps.find(({ id }) => id === operation.setUp)!;
    const frame = machineFrame(part, setUp);
    let work = this.beforeOperation(operation.number);
    const workBox = boxIn(oc, work, frame)!;
    const top = workBox.high[2]! + above;
    return operation.cuts.flatMap((cut) => {
      const here = work;
      work = this.less(work, cut);
      const drilled = drillsOf(cut, frame);
      return cut.forms.flatMap((form): readonly ExactSweep[] => {
        const body = formShape(oc, form, reach);
        const chips = boxIn(oc, commonOf(oc, here, body), frame);
        if (chips === undefined) return [];
        const make = (made: Form): Shape => formShape(oc, made, reach);
        const told = { operation: operation.number, cut: cut.id };
        const drill = drilled.find(({ at }) => at[0] > chips.low[0]! - 1e-3 && at[0] < chips.high[0]! + 1e-3 && at[1] > chips.low[1]! - 1e-3 && at[1] < chips.high[1]! + 1e-3);
        if (drill !== undefined) {
          const out = chips.low[2]! < workBox.low[2]! + 1e-3 && drill.open ? through(drill.diameter) : 0;
          const tip = chips.low[2]! - out;
          const nose = tip + Math.max(reachOf('drilling', drill.diameter).stickOut, chips.high[2]! - chips.low[2]! + 3);
          const holder = setUp.machine === 'lathe' || nose >= top ? undefined : make(roundForm(frame, drill.at, reachOf('drilling', drill.diameter).holder / 2, nose, top));
          return [{ ...told, tool: make(roundForm(frame, drill.at, drill.diameter / 2, tip, top)), ...(holder === undefined ? {} : { holder }) }];
        }
        if (setUp.machine === 'lathe') {
          const swing = 5 + Math.max(...[workBox.low, workBox.high].flatMap(([x, y]) => [Math.abs(x!), Math.abs(y!)]));
          return [{ ...told, tool: commonOf(oc, body, make(roundForm(frame, [0, 0], swing, chips.low[2]!, chips.high[2]!))) }];
        }
        const diameter = Math.min(operation.cutter.diameter ?? Math.min(chips.high[0]! - chips.low[0]!, chips.high[1]! - chips.low[1]!), largestCutter);
        const grown = (by: number, low: number): Box => ({ low: [chips.low[0]! - by, chips.low[1]! - by, low], high: [chips.high[0]! + by, chips.high[1]! + by, top] });
        const { stickOut, holder } = reachOf('milling', diameter);
        const nose = chips.low[2]! + Math.max(stickOut, chips.high[2]! - chips.low[2]! + 3);
        const tool = commonOf(oc, body, make(boxForm(frame, grown(diameter, chips.low[2]!))));
        return [{ ...told, tool, ...(nose >= top ? {} : { holder: make(boxForm(frame, grown(holder / 2, nose))) }) }, ...this.runOuts(form, frame, chips, workBox, diameter, top).map((out) => ({ ...told, tool: out }))];
      });
    });
  }
}

/** Holes that a cut drills along the machine's Z: where, how wide, and whether right through. */
function drillsOf({ sizes }: Cut, { origin, x, y, z }: MachineFrame): readonly { readonly at: readonly [number, number]; readonly diameter: number; readonly open: boolean }[] {
  return sizes.flatMap((size) => {
    if (size.kind !== 'hole' || Math.abs(dot(size.direction, z)) < 1 - 1e-6) return [];
    return size.points.map((point) => ({ at: [dot(subtract(point, origin), x), dot(subtract(point, origin), y)] as const, diameter: size.diameter.value, open: size.depth === undefined }));
  });
}
