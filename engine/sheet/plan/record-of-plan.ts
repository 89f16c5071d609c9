import type { Orientation, Paper } from '../../../templates/paper.js';
import { volumeOf } from '../../solid/measure.js';
import type { Drawing } from '../drawing.js';
import type { FlowedSheet } from '../operations/flow.js';
import { frameOf, runningOf } from '../record.js';
import { phraseText, type Speech } from '../say/texts.js';
import type { OperationPicture } from './picture/operation-picture.js';
import { fixtureWords } from './fixture-words.js';
import type { PlanGround } from './plan-ground.js';
import type { PlannedOperation, PlanRecord } from './plan-record.js';
import { readingText } from './reading-lines.js';
import { ranked } from './stakes-strips.js';

interface PlanSource {
  readonly ground: PlanGround;
  readonly speech: Speech;
  readonly flowed: readonly FlowedSheet[];
  readonly drawing: Drawing;
  readonly paper: Paper;
  readonly orientation: Orientation;
  readonly pictures: ReadonlyMap<number, OperationPicture>;
}

const round = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;
const rounded = (figures: Readonly<Record<string, number | string>>): Readonly<Record<string, number | string>> =>
  Object.fromEntries(Object.entries(figures).map(([name, value]) => [name, typeof value === 'number' ? round(value) : value]));

export function planRecordOf(source: PlanSource): PlanRecord {
  const { ground, speech, flowed, drawing, paper, orientation, pictures } = source;
  const { part } = ground;
  const operations = ground.runs.flatMap((runGround) =>
    runGround.states.map((state, i): PlannedOperation => {
      const { run, pack, readings } = runGround;
      const made = fixtureWords(runGround);
      const { operation, before, after, removed } = state;
      const plan = run.operations.find(({ number }) => number === operation.number);
      return {
        number: operation.number,
        title: operation.title,
        setUp: operation.setUp,
        cutter: operation.cutter.name,
        cuts: operation.cuts.map(({ id }) => id),
        text: (plan?.instructions ?? []).map((phrase) => phraseText(phrase, speech)).join('. '),
        sheet: 1 + flowed.findIndex((sheet) => sheet.operations.includes(operation.number)),
        ...runningOf(plan),
        volume: { before: round(volumeOf(before)), removed: round(removed), left: round(volumeOf(after)) },
        cutterFrom: pictures.get(operation.number)?.cutterFrom ?? null,
        hold: `${run.setUp.holding}${made === undefined ? '' : `; fixture: ${made}`}`,
        pack: phraseText(pack, speech),
        readings: readings[i]!.map((reading) => readingText(reading, speech)),
      };
    }),
  );
  const states = ground.runs.flatMap((run) => run.states);
  const volumes = { stock: round(volumeOf(states[0]!.before)), removed: round(states.reduce((sum, { removed }) => sum + removed, 0)), part: round(volumeOf(states[states.length - 1]!.after)) };
  return {
    format: 'trialpiece plan record',
    version: 1,
    part: part.name,
    title: drawing.title,
    hand: ground.handed ? part.hand : 'none',
    units: speech.unit,
    paper: { name: paper.name, orientation, size: [drawing.sheets[0]!.size[0], drawing.sheets[0]!.size[1]] },
    sheets: drawing.sheets.map(({ title }, i) => ({ number: i + 1, title })),
    setUps: part.setUps.map((setUp) => ({ id: setUp.id, machine: setUp.machine, holding: setUp.holding, zero: setUp.zero, frame: frameOf(part, setUp), grip: setUp.grip ?? null })),
    operations,
    volumes,
    findings: ground.findings.map(({ check, operation, gravity, figures, sentence, source: from }) => ({ check, operation, gravity, figures: rounded(figures), sentence: phraseText(sentence, speech), source: from })),
    stops: ground.stops.map(({ operation, when, kind, words }) => ({ operation, when, kind, sentence: phraseText(words, speech) })),
    stakes: ranked(ground.stakes).map((stake) => ({
      operation: stake.operation,
      chance: round(stake.chance),
      risks: stake.risks.map(({ kind, chance, because, figures, source: from }) => ({ kind, chance: round(chance), because: phraseText(because, speech), figures: rounded(figures), source: from })),
      hoursSoFar: round(stake.hoursSoFar),
      hoursHere: round(stake.hoursHere),
      materialHours: round(stake.materialHours),
      materialKilograms: round(stake.materialKilograms),
      atStake: round(stake.atStake),
      atStakeWithAlike: round(stake.atStakeWithAlike),
      alike: stake.alike,
      rehearsedWith: stake.rehearsedWith ?? null,
      rehearsalCost: round(stake.rehearsalCost),
      worthRehearsing: stake.worthRehearsing,
      notRehearsed: stake.notRehearsed ?? null,
    })),
    checks: checksOf(source),
  };
}

function checksOf({ ground, flowed, pictures }: PlanSource): PlanRecord['checks'] {
  const rows = new Set(flowed.flatMap((sheet) => sheet.operations));
  const { operations } = ground.part;
  return [{ name: 'every operation has a row and a picture', passed: operations.every(({ number }) => rows.has(number) && (pictures.get(number)?.items.length ?? 0) > 0), figures: { operations: operations.length } }];
}
