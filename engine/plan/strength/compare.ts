import { scaledEngine } from '../../part/loads.js';
import type { Parameters, Values } from '../../part/parameters.js';
import { exactValues } from './exact-values.js';
import { judge, type Judged } from './judge.js';
import { proposal, type Proposal } from './propose.js';
import type { StrengthTask } from './task.js';

export type { StrengthTask };

/** One check at the old size, exactly scaled, and as chosen, with what scaling made of it. */
export interface StrengthRow extends Pick<Judged, 'what' | 'kind' | 'by' | 'material' | 'unit' | 'asked' | 'source'> {
  readonly before: Figures;
  readonly exact: Figures;
  readonly after: Figures;
  /** Change of the safety by exact scaling, and by that and all choices, per cent of what it was. */
  readonly exactChange: number;
  readonly change: number;
  /** "fails": less than is asked; "weaker": the choices took more than a tenth of what exact scaling leaves. */
  readonly verdict: 'holds' | 'weaker' | 'fails';
  readonly proposal?: Proposal;
}

export type Figures = Pick<Judged, 'figure' | 'allowed' | 'safety'>;

/** So much of what exact scaling leaves may go before it is told as weaker, part of one. */
const WEAKER = 0.1;

/**
 * The checks of a part at both sizes, at the same boiler pressure. Steam's stresses are the same in an exactly scaled part,
 * for loads and areas both grow by the square; weight's grow by the factor.
 */
export function compareStrength<P extends Parameters>(task: StrengthTask<P>): readonly StrengthRow[] {
  const { generator, before, after, factor } = task;
  const { loads } = generator;
  if (loads === undefined) return [];
  const engine = scaledEngine(loads.engine, factor);
  const judged = (values: Values<P>, size: 'before' | 'after'): readonly Judged[] => loads.checks(values, size === 'before' ? loads.engine : engine).map(judge);
  const [was, exact, is] = [judged(before, 'before'), judged(exactValues(generator.parameters, before, factor), 'after'), judged(after, 'after')];
  return is.map((now, i): StrengthRow => {
    const [old, ideal] = [was[i]!, exact[i]!];
    const verdict = now.safety < now.asked ? 'fails' : now.safety < (1 - WEAKER) * ideal.safety ? 'weaker' : 'holds';
    const { what, kind, by, material, unit, asked, source } = now;
    const wanted = verdict === 'fails' ? asked : (1 - WEAKER) * ideal.safety;
    const better = verdict === 'holds' ? undefined : proposal(task, (values) => judged(values, 'after')[i]!.safety, wanted);
    return {
      what, kind, by, material, unit, asked, source,
      before: figures(old),
      exact: figures(ideal),
      after: figures(now),
      exactChange: percent(ideal.safety, old.safety),
      change: percent(now.safety, old.safety),
      verdict,
      ...(better === undefined ? {} : { proposal: better }),
    };
  });
}

const figures = ({ figure, allowed, safety }: Judged): Figures => ({ figure, allowed, safety });
const percent = (now: number, was: number): number => Math.round(1e4 * (100 * (now / was - 1))) / 1e4 + 0;
