import type { HoleSize } from '../part/cut.js';
import type { Operation, Part } from '../part/part.js';
import { findDrill, nearestDrill, type Drill } from '../trade/drills.js';
import { chooseReamer, chooseTap, chooseTappingDrill } from '../trade/shop/choices.js';
import type { Shop } from '../trade/shop/shop.js';
import { threadPercent } from '../trade/thread-percent.js';
import { findThread, type Thread } from '../trade/threads.js';
import { UserError } from '../units/user-error.js';
import { figure } from './figures.js';
import { holeSizes, placesKey } from './hole-places.js';
import type { CutterPlan } from './speeds.js';
import type { Listener } from './shop-machine.js';

/** Something that the shop lacks: what it is, and what can be done with what is there. */
export interface Lack {
  readonly toGet: string;
  /** The second best that the shop has and what it costs, in a sentence. */
  readonly instead: string;
}

/** What an operation needs that the shop does not have. */
export function lacksOf(part: Part, operation: Operation, cutters: readonly CutterPlan[], listener: Listener): readonly Lack[] {
  const { shop, unit } = listener;
  const size = (mm: number): string => `\u2300${figure(mm, unit)} ${unit}`;
  const found = operation.cuts.flatMap((cut) =>
    cut.sizes.flatMap((each): readonly Lack[] => {
      if (each.kind === 'hole' && each.finish === 'drilled' && each.tool !== undefined) return drillLack(part, each, each.tool, listener);
      if (each.kind === 'hole' && each.finish === 'reamed') return reamerLack(shop, each.diameter.value, size);
      if (each.kind === 'tapping') return threadLack(shop, each.thread.designation, 'taps');
      if (each.kind === 'internal-thread' && each.method === 'tap') return threadLack(shop, each.thread.designation, 'taps');
      if (each.kind === 'external-thread') return threadLack(shop, each.thread.designation, 'dies');
      return [];
    }),
  );
  const mills = cutters.flatMap(({ endMill }): readonly Lack[] => {
    if (endMill?.lacking === undefined) return [];
    const other = endMill.cutter.diameter !== endMill.lacking;
    return [{ toGet: `end mill ${size(endMill.lacking)}`, instead: other ? `the figures are for ${size(endMill.cutter.diameter)}, which the shop has` : 'the shop has none that enters' }];
  });
  return [...found, ...mills];
}

function quietly<T>(find: () => T): T | undefined {
  try {
    return find();
  } catch (error) {
    if (error instanceof UserError) return undefined;
    throw error;
  }
}

/** The thread that is cut into a hole later, if any. */
function threadIn(part: Part, hole: HoleSize): Thread | undefined {
  const key = placesKey(hole.points);
  const tapping = part.operations.flatMap(holeSizes).find((size) => size.kind === 'tapping' && placesKey(size.points) === key);
  return tapping?.kind === 'tapping' ? quietly(() => findThread(tapping.thread.designation)) : undefined;
}

function drillLack(part: Part, hole: HoleSize, tool: string, { shop, unit }: Listener): readonly Lack[] {
  const own = shop.drills;
  const drill = quietly(() => findDrill(tool));
  if (own === undefined || drill === undefined) return [];
  const thread = threadIn(part, hole);
  if (own.some(({ name }) => name === drill.name)) return thread === undefined ? [] : betterDrill(shop, thread, drill);
  const toGet = `drill ${drill.name}`;
  if (thread !== undefined) {
    const { use } = chooseTappingDrill({ ...shop, drills: own }, thread);
    const found = own.some(({ name }) => name === use.drill.name);
    const percent = (diameter: number): string => `${Math.round(threadPercent(thread, diameter).percent)} %`;
    return [{ toGet, instead: found ? `with ${use.drill.name} the thread is ${percent(use.drill.diameter)} instead of ${percent(drill.diameter)}` : 'the shop has no drill for this thread' }];
  }
  const use = own.length === 0 ? undefined : nearestDrill(drill.diameter, { from: own });
  if (use === undefined) return [{ toGet, instead: 'the shop has no drills' }];
  const off = use.diameter - drill.diameter;
  return [{ toGet, instead: `${use.name} is the nearest, ${figure(Math.abs(off), unit)} ${off < 0 ? 'smaller' : 'larger'}` }];
}

/** Where the hole is for a drill that the shop has, though another would leave a better thread. */
function betterDrill(shop: Shop, thread: Thread, drill: Drill): readonly Lack[] {
  const { best } = chooseTappingDrill(shop, thread);
  if (best.drill.name === drill.name) return [];
  const percent = (diameter: number): string => `${Math.round(threadPercent(thread, diameter).percent)} %`;
  return [{ toGet: `drill ${best.drill.name}`, instead: `the figures are for ${drill.name}, which the shop has: the thread is ${percent(drill.diameter)} instead of ${percent(best.drill.diameter)}` }];
}

function reamerLack(shop: Shop, diameter: number, size: (mm: number) => string): readonly Lack[] {
  const choice = chooseReamer(shop, diameter);
  if (choice.have) return [];
  const toGet = `reamer ${size(diameter)}`;
  return [{ toGet, instead: choice.use === diameter ? 'bore it to size' : `after the reamer ${size(choice.use)} the rest is bored` }];
}

function threadLack(shop: Shop, designation: string, kind: 'taps' | 'dies'): readonly Lack[] {
  const thread = quietly(() => findThread(designation));
  if (thread === undefined) return [];
  const choice = chooseTap(shop, thread, kind);
  return choice.have || choice.toGet === undefined ? [] : [{ toGet: choice.toGet, instead: (choice.cost ?? '').replace(/\.$/, '') }];
}
