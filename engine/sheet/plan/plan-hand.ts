import { papers } from '../../../templates/papers/index.js';
import type { Orientation } from '../../../templates/paper.js';
import { footOn, finishSheet } from '../compose/sheets.js';
import { cautionText } from '../compose/notes-of.js';
import { titleOf } from '../compose/title.js';
import type { Drawing, DrawingSheet, Item } from '../drawing.js';
import { drawingArea } from '../frame-paper.js';
import { columnsOn } from '../operations/columns.js';
import { flow } from '../operations/flow.js';
import type { Strip } from '../operations/strips.js';
import type { Part } from '../../part/part.js';
import type { Solid } from '../../solid/model.js';
import { papersFor, speechFor, type PrintWishes } from '../print-wishes.js';
import type { Speech } from '../say/texts.js';
import { fixtureWords } from './fixture-words.js';
import { footKey, type FootKey } from './foot-key.js';
import { headStrips, lackStrips } from './head-strips.js';
import { operationRow } from './operation-row.js';
import { operationPicture, type OperationPicture } from './picture/operation-picture.js';
import { sceneOf } from './picture/scene.js';
import type { PlanGround, RunGround } from './plan-ground.js';
import type { PlanRecord } from './plan-record.js';
import { planRecordOf } from './record-of-plan.js';
import { stakesStrips } from './stakes-strips.js';

/** The plan of one hand of a part. */
export interface MadePlan {
  readonly drawing: Drawing;
  readonly record: PlanRecord;
  /** Name for its files, without ending. */
  readonly fileStem: string;
}

const documentType = 'operation sheet';
/** The room for the picture at the left of a row, and what the work fills of it; mm. */
const pictureWidth = 78;
const workRoom = { width: 56, height: 40 } as const;

/** Makes the plan of one hand from its ground. Throws UserError for a paper that does not exist, or is too small for a row. */
export function planHand(ground: PlanGround, asked: PrintWishes): MadePlan {
  const { part, handed } = ground;
  const speech = speechFor(asked, part);
  const paper = papersFor(asked)?.[0] ?? papers[0]!;
  const upright: Orientation = paper.orientations.includes('portrait') ? 'portrait' : paper.orientations[0]!;
  const titled = (sheet: number, sheets: number) => ({ ...titleOf(part, speech, { handed, scale: 'none', paper, angle: asked.angle }), documentType, sheet, sheets });
  const { taken } = footOn(paper, upright, titled(10, 10), speech.unit, 'following');
  const key = footKey(drawingArea(paper, upright), taken);
  const columns = columnsOn(paper, upright, [...taken, key.box]);
  const width = columns[0]!.right - columns[0]!.left;
  const pictures = new Map<number, OperationPicture>();
  const groups = [
    ...headStrips(part, ground.plan, ground.findings, speech, { handed, paper }, width),
    ...ground.runs.map((run) => ({ strips: runStrips(ground, run, speech, width, pictures), continued: [] })),
    { strips: stakesStrips(part, ground.stakes, speech, width), continued: [] },
    { strips: lackStrips(ground.plan, width), continued: [] },
  ];
  const flowed = flow(groups.filter(({ strips }) => strips.length > 0), columns);
  const name = handed ? `${part.title}, ${part.hand} hand` : part.title;
  const sheets = flowed.map(({ items }, i): DrawingSheet => finishSheet(paper, upright, titled(i + 1, flowed.length), speech.unit, 'following', `${name}: ${documentType}, sheet ${i + 1} of ${flowed.length}`, keyed(items, key)));
  const drawing: Drawing = { title: `${name}: plan`, subject: `Operation sheets of the ${part.title.toLowerCase()} for ${part.engine}`, keywords: [part.name, part.material.name, 'plan', paper.name], sheets };
  return {
    drawing,
    record: planRecordOf({ ground, speech, flowed, drawing, paper, orientation: upright, pictures }),
    fileStem: handed ? `${part.name}-${part.hand}-plan` : `${part.name}-plan`,
  };
}

/** What stands on a sheet, with the key to what its pictures show. */
const keyed = (items: readonly Item[], key: FootKey): readonly Item[] =>
  items.some((item) => item.kind === 'stroke' && item.role === 'finished' && item.group !== 'operations') ? [...items, ...key.items] : items;

/** The rows of a stretch in one set-up; cautions stand where they first matter in it. */
function runStrips(ground: PlanGround, runGround: RunGround, speech: Speech, width: number, pictures: Map<number, OperationPicture>): readonly Strip[] {
  const { part } = ground;
  const { run, states, pack } = runGround;
  const drawn = runPictures(part, runGround, ground.runs.at(-1)!.states.at(-1)!.after);
  const warned = new Set<string>();
  return states.flatMap((state, i) => {
    const { operation } = state;
    const plan = run.operations.find(({ number }) => number === operation.number)!;
    const picture = drawn[i]!;
    pictures.set(operation.number, picture);
    const cautions = (operation.caution ?? []).filter((id) => !warned.has(id));
    for (const id of cautions) warned.add(id);
    const of = <T extends { readonly operation: number }>(list: readonly T[]): readonly T[] => list.filter((each) => each.operation === operation.number);
    return operationRow(
      { run, operation, plan, picture, pack, fixture: fixtureWords(runGround), readings: runGround.readings[i]!, findings: of(ground.findings), stops: of(ground.stops), cautions: cautions.map(cautionText), first: i === 0 },
      speech,
      width,
      pictureWidth,
    );
  });
}

/** The pictures of a stretch, at the largest scale at which each with all its marks has room. */
function runPictures(part: Part, ground: RunGround, finished: Solid): readonly OperationPicture[] {
  const sceneAt = sceneOf(part, ground, finished, workRoom);
  const { run, states } = ground;
  let pictures: readonly OperationPicture[] = [];
  for (const share of [1, 0.9, 0.8, 0.7, 0.6]) {
    const scene = sceneAt(share);
    pictures = states.map((state) => operationPicture(part, run, run.operations.find(({ number }) => number === state.operation.number)!, state, scene));
    if (pictures.every(({ width }) => width <= pictureWidth - 2)) break;
  }
  return pictures;
}
