import { papers } from '../../templates/papers/index.js';
import type { Orientation, Paper } from '../../templates/paper.js';
import { inchScales, isoScales, type DrawingScale } from '../../templates/scales.js';
import type { Part } from '../part/part.js';
import type { View } from '../view/model.js';
import { UserError } from '../units/user-error.js';
import { footOn, finishSheet } from './compose/sheets.js';
import { layOut, type LaidOut, type Rejected } from './compose/lay-out.js';
import type { LayOutTask, LetteredViews } from './compose/lay-out-task.js';
import type { Block } from './compose/block.js';
import { notesBlock, type NoteGroup } from './compose/notes-block.js';
import { notesOf } from './compose/notes-of.js';
import { pictureBlock } from './compose/picture-block.js';
import { titleOf } from './compose/title.js';
import { distancesOf } from './dimension/distances.js';
import { shownStations } from './dimension/shown-stations.js';
import type { Drawing, DrawingSheet } from './drawing.js';
import type { PaperBox } from './frame-box.js';
import { markMakers, makersInWords } from './hand-marks.js';
import { columnsOn } from './operations/columns.js';
import { operationSheets } from './operations/operation-sheets.js';
import { pictureOf, printCamera } from './operations/picture.js';
import type { PageSet } from './pages/page-section.js';
import { pageSheets } from './pages/page-sheets.js';
import { movedItems } from './place/pieces.js';
import type { PrintGround } from './print-ground.js';
import type { PrintRecord } from './print-record.js';
import { papersFor, scalesFor, speechFor, type PrintWishes } from './print-wishes.js';
import { recordOf } from './record.js';
import { itemsOf } from './say/items.js';
import { chooseViews, type ChosenViews } from './views/choose-views.js';
import { broken } from './views/breaks.js';
import type { ViewPlan } from './views/plan.js';

/** The print of one hand of a part. */
export interface MadePrint {
  readonly drawing: Drawing;
  readonly record: PrintRecord;
  /** Name for its files, without ending. */
  readonly fileStem: string;
}

const sectionLetters = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'];

/** Makes the print of one hand from its ground. Throws UserError where the part cannot be shown, or the sheet is too small. */
export function printHand({ part, comparison, finished, plans, prepared, pages, rehearsal, asDrawn }: PrintGround, asked: PrintWishes): MadePrint {
  const speech = speechFor(asked, part);
  const scales = scalesFor(asked);
  const { handed } = comparison;
  const distances = distancesOf(part, shownStations(part, finished), plans);
  const said = itemsOf(part, distances.dimensions, speech);
  const items = handed ? markMakers(part, said, comparison) : said;
  const sets = chooseViews(items, plans, part.name).map(lettered).map((set) => ({ ...set, chosen: broken(part, set.chosen) }));
  const picture = pictureOf(finished, printCamera(part));
  const groups = notesOf(part, {
    speech,
    handed,
    references: distances.dimensions.some(({ reference }) => reference),
    makers: makersInWords(part, comparison),
    ...(asDrawn === undefined ? {} : { asDrawn }),
  });
  const titled = (paper: Paper, scale: string, documentType: string, sheet: number, sheets: number) => ({
    ...titleOf(part, speech, { handed, scale, paper, angle: asked.angle }),
    documentType,
    sheet,
    sheets,
  });
  const task = (copies: LayOutTask['copies']): LayOutTask => ({
    copies,
    part,
    sets,
    angle: asked.angle,
    scales,
    ...scaleLimits(plans[0]!.view.box, scales, asDrawn === true ? sketch : readable),
    detailScales: speech.unit === 'in' ? inchScales : isoScales,
    beside: (scale) => besideViews(picture, part, groups, scale.factor),
  });
  const taken = (paper: Paper, orientation: Orientation) => footOn(paper, orientation, titled(paper, '10:1', 'shop print', 10, 10), speech.unit, 'full').taken;
  const { laidOut, rejected } = bestLayOut(part, task, taken, papersFor(asked));
  const { paper, orientation } = laidOut;
  // Tables read best on an upright sheet, where the paper may stand upright.
  const upright: Orientation = paper.orientations.includes('portrait') ? 'portrait' : orientation;
  const foot = footOn(paper, upright, titled(paper, laidOut.scale.name, 'operation sheet', 10, 10), speech.unit, 'following');
  const operations = operationSheets(part, prepared, speech, paper, upright, foot.taken, asDrawn !== true);
  const more = pages === undefined ? [] : pageSheets(pages.sections, speech, columnsOn(paper, upright, foot.taken));
  const count = laidOut.sheets.length + operations.length + more.length;
  const name = handed ? `${part.title}, ${part.hand} hand` : part.title;
  const finish = (number: number, type: 'shop print' | 'operation sheet' | PageSet['documentType'], way: Orientation, contents: DrawingSheet['items']): DrawingSheet =>
    finishSheet(
      paper,
      way,
      titled(paper, laidOut.scale.name, type, number, count),
      speech.unit,
      type === 'shop print' ? 'full' : 'following',
      `${name}: ${type}, sheet ${number} of ${count}`,
      contents,
    );
  const sheets = [
    ...laidOut.sheets.map((placed, i) => finish(i + 1, 'shop print', orientation, placed.flatMap(({ block, by }) => movedItems(block.items, by)))),
    ...operations.map((sheet, i) => finish(laidOut.sheets.length + i + 1, 'operation sheet', upright, sheet.items)),
    ...more.map((sheet, i) => finish(laidOut.sheets.length + operations.length + i + 1, pages!.documentType, upright, sheet.items)),
  ];
  const drawing: Drawing = {
    title: name,
    subject: `Shop print of the ${part.title.toLowerCase()} for ${part.engine}`,
    keywords: [part.name, part.material.name, `scale ${laidOut.scale.name}`, paper.name],
    sheets,
  };
  return {
    drawing,
    record: recordOf({ part, speech, comparison, distances, laidOut, rejected, operations, plan: prepared.plan, drawing, angle: asked.angle, groups, rehearsal }),
    fileStem: handed ? `${part.name}-${part.hand}` : part.name,
  };
}

/** Gives the chosen sections their letters, in order. */
function lettered(chosen: ChosenViews): LetteredViews {
  const sections: (readonly [string, ViewPlan])[] = [];
  const renamed = new Map<ViewPlan, ViewPlan>();
  for (const plan of chosen.plans) {
    if (plan.place !== 'section') continue;
    const letter = sectionLetters[sections.length]!;
    const named: ViewPlan = { ...plan, id: `section ${letter}-${letter}`, title: `${letter}–${letter}` };
    renamed.set(plan, named);
    sections.push([letter, named]);
  }
  const now = (plan: ViewPlan): ViewPlan => renamed.get(plan) ?? plan;
  return {
    sections,
    chosen: { ...chosen, plans: chosen.plans.map(now), housed: chosen.housed.map((each) => ({ ...each, plan: now(each.plan) })) },
  };
}

/** The picture and the notes in the sizes that may be tried, the preferred first. */
const besideViews = (picture: View, part: Part, groups: readonly NoteGroup[], factor: number): readonly (readonly Block[])[] =>
  [1, 0.75, 0.5].flatMap((share) =>
    [110, 165].map((width) => [pictureBlock(picture, printCamera(part), Math.min(factor, 2) * share), notesBlock(groups, width)]),
  );

/** Longest side of a view on paper: at least this is needed to read it, and more than that shows no more; mm. */
const readable = { least: 35, wanted: 100 } as const;
/** The same for a piece of a fixture, which is to fill one small sheet. */
const sketch = { least: 25, wanted: 60 } as const;

/** Between which scales a part is readable without excess; a scale that was asked for is taken as it is. */
function scaleLimits({ low, high }: { readonly low: readonly [number, number]; readonly high: readonly [number, number] }, scales: readonly DrawingScale[], read: { readonly least: number; readonly wanted: number }): { readonly least: number; readonly wanted: number } {
  if (scales.length === 1) return { least: 0, wanted: Infinity };
  const longest = Math.max(high[0] - low[0], high[1] - low[1]);
  return { least: Math.min(1, read.least / longest), wanted: read.wanted / longest };
}

/** Lays out on the paper asked for; else on A4, or on A3 where that shows a small part larger. Throws UserError when nothing fits. */
function bestLayOut(
  part: Part,
  task: (copies: LayOutTask['copies']) => LayOutTask,
  taken: (paper: Paper, orientation: Orientation) => readonly PaperBox[],
  wanted: readonly Paper[] | undefined,
): { readonly laidOut: LaidOut; readonly rejected: readonly Rejected[] } {
  const tried = wanted ?? papers.slice(0, 2);
  const choices = tried.flatMap((paper) => paper.orientations.map((orientation) => ({ paper, orientation, taken: taken(paper, orientation) })));
  const rejected: Rejected[] = [];
  for (const copies of ['none', 'where full', 'by kind'] as const) {
    const { laidOut, rejected: why } = layOut(task(copies), choices);
    rejected.push(...why);
    if (laidOut !== undefined) return { laidOut, rejected };
  }
  const last = rejected[rejected.length - 1];
  throw new UserError(
    `the print of the ${part.name} does not fit ${tried.map(({ name }) => name).join(' or ')} at ${last?.scale ?? 'any scale'}: ${last?.reason ?? 'no scale fits'}; ask for a larger paper (${papers.map(({ name }) => name).join(', ')}) or another scale`,
  );
}
