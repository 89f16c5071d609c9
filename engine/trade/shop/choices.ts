import { nearestStock, type StockSize } from '../stock.js';
import { tappingDrill, type TappingDrill } from '../tapping.js';
import type { Thread } from '../thread.js';
import type { DrillChoice } from '../drills.js';
import type { Cutter, Shop } from './shop.js';

/**
 * What to use for a job. `best` is the choice of the tables; `use` is what the shop has that comes nearest, which is `best`
 * where it has that. Otherwise `toGet` names what is to be got, and `cost` says in one sentence what doing without costs.
 */
export interface Choice<T> {
  readonly best: T;
  readonly use: T;
  readonly have: boolean;
  readonly toGet?: string;
  readonly cost?: string;
}

const owned = <T>(best: T): Choice<T> => ({ best, use: best, have: true });

const per = (value: number): string => `${Math.round(value)} %`;

/** The tapping drill nearest to `percent` of thread of those in the shop. */
export function chooseTappingDrill(shop: Shop, thread: Thread, percent = 65, choice: DrillChoice = {}): Choice<TappingDrill> {
  const best = tappingDrill(thread, percent, choice);
  if (shop.drills === undefined || shop.drills.some(({ name }) => name === best.drill.name)) return owned(best);
  const toGet = `drill ${best.drill.name}`;
  const fitting = shop.drills.filter(({ diameter }) => diameter < thread.major - 0.1 * thread.pitch && diameter > thread.minorInternal - 0.25 * thread.pitch);
  if (fitting.length === 0) return { best, use: best, have: false, toGet, cost: 'the shop has no drill for this thread.' };
  const use = tappingDrill(thread, percent, { ...choice, from: fitting });
  return { best, use, have: false, toGet, cost: `with ${use.drill.name} the thread comes out at ${per(use.percent)} instead of ${per(best.percent)}.` };
}

/** Whether the shop has the tap (or the die), and the nearest thread for which it has one. */
export function chooseTap(shop: Shop, thread: Thread, kind: 'taps' | 'dies' = 'taps'): Choice<Thread> {
  const held = shop[kind];
  const word = kind === 'taps' ? 'tap' : 'die';
  if (held === undefined || held.some(({ designation }) => designation === thread.designation)) return owned(thread);
  const toGet = `${word} ${thread.designation}`;
  const use = [...held].sort((a, b) => Math.abs(a.major - thread.major) - Math.abs(b.major - thread.major))[0];
  if (use === undefined) return { best: thread, use: thread, have: false, toGet, cost: `the shop has no ${word}s.` };
  const change = (100 * (use.stressArea - thread.stressArea)) / thread.stressArea;
  return { best: thread, use, have: false, toGet, cost: `${use.designation} has ${per(Math.abs(change))} ${change < 0 ? 'less' : 'more'} area in tension, and its screw must be got too.` };
}

/** The reamer for a bore, or the largest smaller one, from which the bore must be opened by other means. */
export function chooseReamer(shop: Shop, diameter: number): Choice<number> {
  if (shop.reamers === undefined || shop.reamers.some((size) => Math.abs(size - diameter) < 0.002)) return owned(diameter);
  const use = shop.reamers.filter((size) => size < diameter).at(-1);
  const toGet = `reamer ${diameter} mm`;
  if (use === undefined) return { best: diameter, use: diameter, have: false, toGet, cost: 'bore it to size.' };
  return { best: diameter, use, have: false, toGet, cost: `after the ${use} mm reamer ${(diameter - use).toFixed(3)} mm is left to bore.` };
}

/** The cutter for a slot of a width: that width, or the largest narrower one with which both sides are cut. */
export function chooseCutter(shop: Shop, width: number): Choice<Cutter> {
  const best: Cutter = { kind: 'end mill', diameter: width, material: 'hss', teeth: 2 };
  const same = shop.cutters?.find((cutter) => Math.abs(cutter.diameter - width) < 0.005);
  if (shop.cutters === undefined) return owned(best);
  if (same !== undefined) return owned(same);
  const use = [...shop.cutters].filter(({ diameter }) => diameter < width).sort((a, b) => b.diameter - a.diameter)[0];
  const toGet = `cutter ${width} mm`;
  if (use === undefined) return { best, use: best, have: false, toGet, cost: 'the shop has no cutter as narrow.' };
  return { best, use, have: false, toGet, cost: `the ${use.diameter} mm cutter goes down each side, ${((width - use.diameter) / 2).toFixed(3)} mm off the middle.` };
}

/** The smallest stock of a form that holds `size` (mm), from the shelf if it is there. */
export function chooseStock(shop: Shop, form: string, size: number, material?: string): Choice<StockSize> {
  const best = nearestStock(form, size, { atLeast: true, unit: shop.unit });
  if (shop.stock === undefined) return owned(best);
  const shelf = shop.stock.filter((row) => row.form === best.form && row.size >= size - 1e-6 && (material === undefined || row.material === undefined || row.material === material));
  const use = [...shelf].sort((a, b) => a.size - b.size)[0];
  if (use === undefined) return { best, use: best, have: false, toGet: `${best.form} ${best.name}`, cost: 'nothing on the shelf holds it.' };
  if (use.size <= best.size + 1e-6) return owned(use);
  return { best, use, have: false, toGet: `${best.form} ${best.name}`, cost: `from the shelf ${(use.size - size).toFixed(2)} mm must come off the size.` };
}
