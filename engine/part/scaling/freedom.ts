import type { Parameter } from '../parameters.js';
import type { Drill } from '../../trade/drills.js';
import type { Thread } from '../../trade/threads.js';
import { limitsOf } from '../limits.js';
import type { BarChoice } from './choose-bar.js';
import type { Choice, Free, ValuesByName } from './mend.js';
import { drillOptions, optionsToFollow, stockOptions, unitOf } from './options.js';
import { sizeOf } from './rule.js';
import { candidates, otherPitches } from './series.js';

/** A wall is lowered to this at least, mm: what can just be left between two small holes (common practice). */
const LEAST_WALL = 0.3;

/**
 * What a change costs, of what is moved first to what last: the bar that the part is cut out of; the least wall and the
 * play, which are only bounds; lengths; bar whose faces stay; holes whose reamer is bought; threads.
 */
const weights = { wall: 0.1, blank: 0.05, allowance: 0.3, clearance: 0.3, length: 1, listed: 1.5, stock: 1, drill: 1, thread: 3 } as const;

export interface FreedomWishes {
  readonly mates?: 'stay' | 'too';
  /** The bar that was chosen with both its sides, where there is one. */
  readonly bar?: BarChoice | undefined;
}

/** What may be moved to mend a relation: nothing that the user fixed, nothing that another part has too, no angle and no count. */
export function freedomOf(parameters: Readonly<Record<string, Parameter>>, values: ValuesByName, factor: number, fixed: ReadonlySet<string>, { mates = 'stay', bar }: FreedomWishes = {}): readonly Free[] {
  return Object.entries(parameters).flatMap(([name, parameter]): readonly Free[] => {
    const value = values[name];
    const start = value === undefined ? undefined : sizeOf(value);
    if (start === undefined || fixed.has(name)) return [];
    const limits = limitsOf(parameter);
    const [least, most] = limits === undefined ? [0, Infinity] : [limits.least.size * Math.min(1, factor), limits.greatest.size * Math.max(1, factor)];
    const common = { name, start, least, most };
    const list = (weight: number, options: readonly Choice[]): readonly Free[] => [{ ...common, weight, options }];
    switch (parameter.kind) {
      case 'length':
      case 'clearance':
      case 'allowance': {
        if (parameter.mate !== undefined && mates === 'stay') return [];
        const own = optionsToFollow(parameter.follows, unitOf(parameter));
        if (own !== undefined) return list(weights.listed, own);
        // A tool of the shop has the limits that were given for it, whatever the size of the part.
        if (parameter.follows === 'shop') return [{ ...common, weight: weights.length, least: limits!.least.size, most: limits!.greatest.size }];
        return [{ ...common, weight: parameter.follows === 'edge' ? weights.clearance : weights[parameter.kind] }];
      }
      case 'wall':
        return [{ ...common, bound: true, weight: weights.wall, least: Math.min(start, Math.max(LEAST_WALL, start * Math.min(1, factor))), most: start }];
      case 'stock':
        if (bar?.outcomes[name] !== undefined) return barFreedom({ ...common, weight: parameter.stays === true ? weights.stock : weights.blank }, bar);
        return list(parameter.stays === true ? weights.stock : weights.blank, stockOptions(parameter, unitOf(parameter)));
      case 'drill':
        return list(weights.drill, drillOptions(value as Drill));
      case 'thread': {
        const thread = value as Thread;
        return list(weights.thread, [...otherPitches(thread), ...candidates(thread, [thread.series])].map((each) => ({ size: each.major, name: each.designation, value: { ...each, ...(thread.drillsAtHand === undefined ? {} : { drillsAtHand: thread.drillsAtHand }) } })));
      }
      case 'angle':
      case 'count':
      case 'choice':
        return [];
    }
  });
}

/** A bar is moved with both its sides; one that is cut to size side by side, no further than the bar it is brought down from. */
function barFreedom(free: Free, { sides: { first, second }, bars, broughtDown }: BarChoice): readonly Free[] {
  if (broughtDown !== undefined) return free.name === first ? [{ ...free, most: Math.min(free.most, broughtDown.first) }] : [];
  if (bars.length === 0) return [free];
  return [{ ...free, options: bars.map((bar) => (free.name === first ? { size: bar.first, value: bar.first, also: { [second]: bar.second } } : { size: bar.second, value: bar.second, also: { [first]: bar.first } })) }];
}
