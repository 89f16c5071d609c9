import type { Parameters, Values } from '../../part/parameters.js';
import { holds } from '../../part/relation.js';
import { freedomOf, nameOf, sizeOf, type ParameterValue, type ValuesByName } from '../../part/scaling/index.js';
import type { StrengthTask } from './task.js';

/** A change that would bring a check to what is asked, and what it costs. */
export interface Proposal {
  readonly parameter: string;
  /** mm, and the name where it is a thing of the trade. */
  readonly to: number;
  readonly name?: string;
  readonly safety: number;
  /** Against the exactly scaled size, per cent: what it costs in looks. */
  readonly looks: number;
  /** Set where another part has the same size: both change. */
  readonly mate?: string;
}

/** Lengths are tried in steps of a fiftieth, up to a third more or less. */
const tries = [1.02, 0.98, 1.04, 0.96, 1.06, 0.94, 1.08, 0.92, 1.1, 0.9, 1.15, 0.85, 1.2, 0.8, 1.25, 1.33];

/** The change of one size by the least part of it that makes the check hold and breaks no relation; undefined where none does. */
export function proposal<P extends Parameters>(task: StrengthTask<P>, safetyOf: (values: Values<P>) => number, wanted: number): Proposal | undefined {
  const { generator, after, before, factor, fixed } = task;
  const values = after as ValuesByName;
  const found = freedomOf(generator.parameters, values, factor, fixed, { mates: 'too' }).flatMap((free): readonly Proposal[] => {
    const { kind } = generator.parameters[free.name]!;
    if (kind !== 'length' && kind !== 'stock' && kind !== 'thread') return [];
    const now = free.start;
    const sizes: readonly { readonly size: number; readonly value: ParameterValue }[] = free.options?.filter(({ size }) => Math.abs(size / now - 1) > 1e-6 && Math.abs(size / now - 1) < 0.5) ?? tries.map((by) => ({ size: round(now * by), value: round(now * by) }));
    const best = [...sizes].sort((a, b) => Math.abs(a.size - now) - Math.abs(b.size - now)).find(({ value }) => serves(value));
    if (best === undefined) return [];
    const name = nameOf(best.value);
    const exact = sizeOf((before as ValuesByName)[free.name]!)! * factor;
    const parameter = generator.parameters[free.name]!;
    const mate = 'mate' in parameter ? parameter.mate : undefined;
    return [{ parameter: free.name, to: best.size, ...(name === undefined ? {} : { name }), safety: safetyOf({ ...after, [free.name]: best.value }), looks: 100 * (best.size / exact - 1), ...(mate === undefined ? {} : { mate }) }];

    function serves(value: ParameterValue): boolean {
      const changed = { ...after, [free.name]: value };
      return safetyOf(changed) >= wanted && generator.relations(changed).every(holds);
    }
  });
  return found.sort((a, b) => Math.abs(a.looks) - Math.abs(b.looks))[0];
}

const round = (mm: number): number => Math.round(mm * 1000) / 1000;
