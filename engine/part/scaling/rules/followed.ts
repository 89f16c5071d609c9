import type { Follows, LengthParameter } from '../../parameters.js';
import { optionsToFollow, unitOf } from '../options.js';
import { exactly, type Outcome, type RuleTask } from '../rule.js';
import { nearestOf } from '../snap.js';

interface Manner {
  readonly because: string;
  readonly source: string;
  /** What is done where it is larger than any that is sold. */
  readonly larger: string;
  /** Set where that is for a person to find out. */
  readonly asks?: true;
  /** What is done where it is smaller; undefined where it cannot be made. */
  readonly smaller?: string;
}

const manners: Readonly<Partial<Record<Follows, Manner>>> = {
  reamer: { because: 'the nearest reamer', source: 'reamers commonly held', larger: 'bored to size, for no reamer is as large', smaller: 'drilled, for no reamer is as small' },
  'ground rod': { because: 'the nearest ground rod that is sold', source: 'silver steel sizes, common practice', larger: 'turned from bar, for no ground rod is as large', smaller: 'from wire, for no ground rod is as small' },
  'end mill': { because: 'the nearest cutter', source: 'end mills sold', larger: 'milled in two passes, for no end mill is as large' },
  'corner of an end mill': { because: 'the corner that the nearest cutter leaves', source: 'end mills sold', larger: 'followed round with a smaller cutter' },
  'saw diameter': { because: 'the nearest saw', source: 'slitting saws sold (ISO 2296)', larger: 'larger than any saw that is sold', asks: true },
  'saw thickness': { because: 'the nearest saw', source: 'slitting saws sold (ISO 2296)', larger: 'sawn in two passes' },
};

/** What is made to the size of a tool, or from a rod as bought, takes the nearest size of that. */
export function followedRule(task: RuleTask<LengthParameter>): Outcome {
  const { parameter, value, factor } = task;
  const exact = exactly((value as number) * factor);
  const manner = manners[parameter.follows!]!;
  const options = optionsToFollow(parameter.follows, unitOf(parameter))!;
  const common = { exact, rule: parameter.follows!, source: manner.source };
  const snapped = nearestOf(options, exact);
  if (snapped !== undefined) return { ...common, value: exactly(snapped.option.size), because: `${manner.because}, ${snapped.option.name}`, half: snapped.half };
  const small = exact < options[0]!.size;
  const largest = `the largest listed is ${options.at(-1)!.name}`;
  if (!small) return { ...common, value: exact, because: manner.larger, knockOn: [largest], ...(manner.asks === true ? { decision: `${largest}: ${manner.larger}` } : {}) };
  if (manner.smaller !== undefined) return { ...common, value: exact, because: manner.smaller };
  return { ...common, value: exact, because: 'no cutter is as small', cannot: `${task.name} would need ${exact.toFixed(3)} mm, and the smallest ${parameter.follows!} is ${options[0]!.name}` };
}
