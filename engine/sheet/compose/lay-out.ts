import type { Orientation, Paper } from '../../../templates/paper.js';
import type { DrawingScale } from '../../../templates/scales.js';
import { drawingArea } from '../frame-paper.js';
import type { PaperBox } from '../frame-box.js';
import type { DrawnView } from '../place/draw-view.js';
import { house } from '../place/house.js';
import type { Housed } from '../views/choose-views.js';
import type { Detail } from '../views/details.js';
import type { ViewPlan } from '../views/plan.js';
import type { AlignedViews } from './aligned-views.js';
import { heightOf, widthOf, type Block } from './block.js';
import { drawSet, type DrawnSet, type KnownViews } from './draw-set.js';
import type { LayOutTask, LetteredViews } from './lay-out-task.js';
import { pack, type Placed, type SheetRoom } from './pack.js';
import { viewsApart } from './views-apart.js';

export interface LaidOut {
  readonly set: LetteredViews;
  readonly paper: Paper;
  readonly orientation: Orientation;
  readonly scale: DrawingScale;
  readonly sheets: readonly (readonly Placed[])[];
  readonly views: readonly DrawnView[];
  readonly aligned: AlignedViews;
  readonly details: readonly Detail[];
  readonly housed: readonly Housed[];
}

/** Why a scale on a paper did not do; kept as proof that no larger one fits. */
export interface Rejected {
  readonly paper: string;
  readonly orientation: Orientation;
  readonly scale: string;
  readonly reason: string;
}

/** The room for views on a sheet: the drawing area less what its foot and marks fill. */
export function roomOn(paper: Paper, orientation: Orientation, taken: readonly PaperBox[]): { readonly area: PaperBox; readonly taken: readonly PaperBox[] } {
  const whole = drawingArea(paper, orientation);
  const inset = 4;
  const area = { left: whole.left + inset, right: whole.right - inset, top: whole.top - inset, bottom: whole.bottom + inset };
  return { area, taken };
}

/** A sheet that may be taken: paper, the way it lies, and what its foot and marks fill. */
export interface SheetChoice {
  readonly paper: Paper;
  readonly orientation: Orientation;
  readonly taken: readonly PaperBox[];
}

/** A larger paper gives way to a smaller one on which the scale is at least this. */
const enough = 2;

/**
 * Lays the print out: the largest scale at which everything has a place, on the first paper of the list; a later paper is
 * taken where it shows the part larger and the first can't show it well. Gives the reasons why larger scales did not do.
 */
export function layOut(task: LayOutTask, choices: readonly SheetChoice[]): { readonly laidOut?: LaidOut; readonly rejected: readonly Rejected[] } {
  const rejected: Rejected[] = [];
  const known: KnownViews = new Map();
  const first = choices[0]!.paper;
  let larger: LaidOut | undefined;
  for (const scale of task.scales) {
    if (larger !== undefined && scale.factor < enough) break;
    if (scale.factor < task.least) {
      rejected.push({ paper: first.name, orientation: choices[0]!.orientation, scale: scale.name, reason: 'the part would be too small to read' });
      break;
    }
    const onFirst = choices.filter(({ paper }) => paper === first);
    const found = atScale(task, scale, larger === undefined ? choices : onFirst, rejected, known) ?? (larger === undefined ? apartAtScale(task, scale, choices, rejected, known) : undefined);
    if (found === undefined) continue;
    if (found.paper === first) return { laidOut: found, rejected };
    larger = found;
  }
  return larger === undefined ? { rejected } : { laidOut: larger, rejected };
}

/** Packs with what stands beside in the size that takes the fewest sheets. */
function packBest(blocks: readonly Block[], beside: readonly (readonly Block[])[], room: SheetRoom): ReturnType<typeof pack> {
  let best: ReturnType<typeof pack>;
  for (const each of beside) {
    const sheets = pack([...blocks, ...each], room);
    if (sheets !== undefined && (best === undefined || sheets.length < best.length)) best = sheets;
  }
  return best;
}

/** What is shown by a set of views, mm2 of the part's own. */
const shownArea = ({ chosen }: LetteredViews): number =>
  chosen.plans.reduce((sum, { view: { box } }) => sum + (box.high[0] - box.low[0]) * (box.high[1] - box.low[1]), 0);

/** By so much a set of views must show less than another to be tried for the sake of fewer sheets. */
const clearlyLess = 0.9;

/** The first set of views that fits a sheet at a scale, on the first paper that takes it, on as few sheets as can be. */
function atScale(task: LayOutTask, scale: DrawingScale, choices: readonly SheetChoice[], rejected: Rejected[], known: KnownViews): LaidOut | undefined {
  let best: LaidOut | undefined;
  for (const set of task.sets) {
    // Dearer views that show as much again take no fewer sheets.
    if (best !== undefined && shownArea(set) > clearlyLess * shownArea(best.set)) continue;
    let narrow: DrawnSet | undefined;
    let low: DrawnSet | undefined;
    for (const { paper, orientation, taken } of choices) {
      // A paper further down the list, or more sheets of the same, is no gain.
      if (best !== undefined && best.paper !== paper) continue;
      const room = roomOn(paper, orientation, taken);
      const reject = (reason: string): void => {
        rejected.push({ paper: paper.name, orientation, scale: scale.name, reason });
      };
      const rough = roughSize(set, scale.factor);
      if (rough.width > widthOf(room.area) || rough.height > heightOf(room.area)) {
        reject(`the views need ${Math.ceil(rough.width)} x ${Math.ceil(rough.height)} mm at least`);
        continue;
      }
      narrow ??= drawSet(task, set, scale, 'narrow', known);
      let drawn = narrow;
      let sheets = drawn.failed.length > 0 ? undefined : packBest([drawn.aligned, ...drawn.blocks], task.beside(scale), room);
      // Too high for a wide sheet: callouts may stand beside the views rather than over and under them.
      if (sheets === undefined && heightOf(drawn.aligned.box) > 0.8 * heightOf(room.area) && widthOf(drawn.aligned.box) < 0.8 * widthOf(room.area)) {
        low ??= drawSet(task, set, scale, 'low', known);
        drawn = low;
        sheets = drawn.failed.length > 0 ? undefined : packBest([drawn.aligned, ...drawn.blocks], task.beside(scale), room);
      }
      if (drawn.failed.length > 0) {
        reject(`no room for ${drawn.failed[0]}`);
        continue;
      }
      if (sheets === undefined) {
        reject(`the views need ${Math.ceil(widthOf(drawn.aligned.box))} x ${Math.ceil(heightOf(drawn.aligned.box))} mm`);
        continue;
      }
      if (best === undefined || sheets.length < best.sheets.length)
        best = { set, paper, orientation, scale, sheets, views: drawn.views, aligned: drawn.aligned, details: drawn.details, housed: drawn.housed };
    }
    if (best !== undefined && (best.paper === choices[0]!.paper || best.sheets.length === 1)) return best;
  }
  return best;
}

/** The first set of views that finds room at a scale with each view on its own. */
function apartAtScale(task: LayOutTask, scale: DrawingScale, choices: readonly SheetChoice[], rejected: Rejected[], known: KnownViews): LaidOut | undefined {
  // Views apart serve to show a part well on small paper, not to show it huge.
  if (scale.factor > task.wanted) return undefined;
  for (const set of task.sets) {
    const found = setApart(task, set, scale, choices, rejected, known);
    if (found !== undefined) return found;
  }
  return undefined;
}

function setApart(task: LayOutTask, set: LetteredViews, scale: DrawingScale, choices: readonly SheetChoice[], rejected: Rejected[], known: KnownViews): LaidOut | undefined {
  const drawn = drawSet(task, set, scale, 'narrow', known);
  let best: LaidOut | undefined;
  for (const { paper, orientation, taken } of choices) {
    if (best !== undefined && best.paper !== paper) continue;
    const blocks = [...viewsApart(drawn.outside), ...drawn.blocks];
    const sheets = drawn.failed.length > 0 ? undefined : packBest(blocks, task.beside(scale), roomOn(paper, orientation, taken));
    if (sheets === undefined) rejected.push({ paper: paper.name, orientation, scale: scale.name, reason: drawn.failed[0] === undefined ? 'a single view is too large' : `no room for ${drawn.failed[0]}` });
    else if (best === undefined || sheets.length < best.sheets.length)
      best = { set, paper, orientation, scale, sheets, views: drawn.views, aligned: drawn.aligned, details: drawn.details, housed: drawn.housed };
  }
  return best;
}

/** About the least that a first tier of dimensions adds on one side of a view, mm. */
const tierRoom = house.first + house.overrun;

/** About the least that the views need: their outlines side by side, a tier of dimensions on one side or two, and gaps. */
function roughSize(set: LetteredViews, factor: number): { readonly width: number; readonly height: number } {
  const size = (place: ViewPlan['place'], i: 0 | 1): number => {
    const plan = set.chosen.plans.find((each) => each.place === place);
    if (plan === undefined) return 0;
    const across = i === 0 ? 'up' : 'right';
    const tiers = set.chosen.housed.filter((each) => each.plan === plan && each.home.kind === 'linear' && each.home.measured === across).length;
    return (plan.view.box.high[i] - plan.view.box.low[i]) * factor + tierRoom * Math.min(2, tiers) + house.betweenViews;
  };
  return {
    width: size('front', 0) + size('right', 0) + size('left', 0) + size('rear', 0) - house.betweenViews,
    height: size('front', 1) + size('above', 1) + size('below', 1) - house.betweenViews,
  };
}
