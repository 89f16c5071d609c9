import type { Account } from '../plan/rehearsal/account.js';
import type { TestPiece } from '../plan/rehearsal/piece.js';
import type { RecordedRehearsal } from './print-record.js';
import { phraseText, type Speech } from './say/texts.js';

const round = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;

/** What the record of a test piece says of its likeness, its stakes and what is measured on it. */
export function recordedRehearsal(piece: TestPiece, account: Account, speech: Speech): RecordedRehearsal {
  return {
    of: piece.of.name,
    operations: piece.rehearsed,
    trials: piece.trials,
    barLength: round(piece.barLength),
    beside: piece.beside === undefined ? null : { axis: piece.beside.axis, pitch: round(piece.beside.pitch) },
    ladder: piece.ladder === undefined ? null : piece.ladder.operation,
    likeness: account.likeness.map(({ operation, trial, before, after, margin, alike, ends }) => ({
      operation,
      trial,
      region: round(before.region),
      before: { missing: round(before.missing), extra: round(before.extra) },
      after: { missing: round(after.missing), extra: round(after.extra) },
      margin,
      alike,
      ends: ends.map(({ side, distance, follows }) => ({ axis: side.axis, end: side.end, distance: round(distance), follows: round(follows) })),
    })),
    stakes: account.stakes.map(({ operation, chance, hoursSoFar, hoursHere, materialHours, atStake, rehearsalCost, worthRehearsing, risks }) => ({
      operation,
      chance: round(chance),
      hours: round(hoursSoFar + hoursHere + materialHours),
      atStake: round(atStake),
      rehearsalCost: round(rehearsalCost),
      worthRehearsing,
      risks: risks.map((risk) => ({ kind: risk.kind, chance: round(risk.chance), source: risk.source })),
    })),
    measures: account.measures.map(({ operation, what, nominal, lower, upper, measure, instrument }) => ({
      operation,
      what: phraseText(what, speech),
      nominal: round(nominal),
      lower: round(lower),
      upper: round(upper),
      measure,
      with: instrument,
    })),
    leftOut: piece.leftOut.map(({ operation, cut, gap }) => ({ operation, cut: cut.id, gap: round(gap) })),
  };
}
