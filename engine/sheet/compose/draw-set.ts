import type { DrawingScale } from '../../../templates/scales.js';
import { drawView, type DrawnView } from '../place/draw-view.js';
import type { ViewDrawing } from '../place/view-drawing.js';
import type { Housed } from '../views/choose-views.js';
import { detailsFor, type Detail } from '../views/details.js';
import { hiddenThatTell } from '../views/hidden.js';
import type { ViewPlan } from '../views/plan.js';
import { alignedViews, type AlignedViews } from './aligned-views.js';
import type { Block } from './block.js';
import { labelledView } from './labelled.js';
import type { LayOutTask, LetteredViews } from './lay-out-task.js';

const detailLetters = ['J', 'K', 'L', 'M', 'N', 'P', 'Q', 'R', 'S', 'T'];

/** A set of views drawn at a scale: in line, and those that stand by themselves. */
export interface DrawnSet {
  readonly views: readonly DrawnView[];
  readonly outside: readonly DrawnView[];
  readonly aligned: AlignedViews;
  readonly blocks: readonly Block[];
  readonly details: readonly Detail[];
  readonly housed: readonly Housed[];
  /** What found no place. */
  readonly failed: readonly string[];
}

/** Views drawn before, by all that tells them apart: sets of views have many in common. */
export type KnownViews = Map<string, DrawnView>;

const keyOf = ({ plan, scale, housed, sections, details, keep, keepHidden }: ViewDrawing): string =>
  [
    plan.id,
    plan.eye,
    plan.section?.value,
    scale,
    keep,
    housed.map(({ item }) => item.id).join(';'),
    sections.map(([letter, section]) => `${letter} ${section.section!.axis} ${section.section!.value}`).join(';'),
    details.map(({ letter, centre, radius }) => `${letter} ${centre.join(' ')} ${radius}`).join(';'),
    plan.view.curves.map((curve) => (!curve.visible && keepHidden(curve) ? 1 : 0)).join(''),
  ].join('|');

/** How often one view may be shown. */
const mostCopies = 4;

/** Draws a set of views at a scale with all that is said on them, details and views shown again included. */
export function drawSet(task: LayOutTask, set: LetteredViews, scale: DrawingScale, keep: 'narrow' | 'low', known: KnownViews): DrawnSet {
  const { part } = task;
  const { chosen } = set;
  const tells = hiddenThatTell(part, chosen.plans);
  const found = detailsFor(part, chosen.housed, scale.factor, task.detailScales, detailLetters);
  const { details } = found;
  const failed: string[] = [];
  const copies: DrawnView[] = [];
  let housed = found.housed;
  const draw = (plan: ViewPlan, factor: number): DrawnView => {
    const drawOnce = (shown: ViewPlan, said: readonly Housed[]): DrawnView => {
      const drawing: ViewDrawing = {
        part,
        plan: shown,
        scale: factor,
        housed: said,
        sections: shown === plan ? sectionsOn(plan, set) : [],
        details: shown === plan ? details.filter(({ parent }) => parent === plan) : [],
        keep,
        keepHidden: (curve) => tells(curve, plan),
      };
      const key = keyOf(drawing);
      const view = known.get(key) ?? drawView(drawing);
      known.set(key, view);
      return { ...view, plan: shown };
    };
    const all = housed.filter((each) => each.plan === plan);
    const first = task.copies === 'by kind' ? all.filter(({ home }) => home.kind === 'linear') : all;
    const view = drawOnce(plan, first);
    if (task.copies === 'none') {
      failed.push(...view.failed);
      return view;
    }
    // What found no place is said on the same view shown again.
    let left = all.filter((each) => !first.includes(each) || view.failed.includes(each.item.id));
    for (let n = 2; left.length > 0; n += 1) {
      const again: ViewPlan = { ...plan, id: `${plan.id}, continued${n > 2 ? ` ${n}` : ''}`, title: `${plan.title}, continued` };
      const copy = drawOnce(again, left);
      const rest = left.filter(({ item }) => copy.failed.includes(item.id));
      if (n > mostCopies || rest.length === left.length) {
        failed.push(...rest.map(({ item }) => item.id));
        break;
      }
      const moved = new Set(left.filter((each) => !rest.includes(each)));
      housed = housed.map((each) => (moved.has(each) ? { ...each, plan: again } : each));
      copies.push({ ...copy, failed: [] });
      left = rest;
    }
    return { ...view, failed: [] };
  };
  const views = chosen.plans.map((plan) => draw(plan, scale.factor));
  const outside = views.filter(({ plan }) => plan.place !== 'section');
  const larger = details.map((detail) => draw(detail.plan, detail.scale.factor));
  const aligned = alignedViews(outside, task.angle);
  const blocks = [...views.filter(({ plan }) => plan.place === 'section'), ...larger, ...copies].map((view) => labelledView(view));
  return { views: [...views, ...larger, ...copies], outside, aligned, blocks, details, housed, failed };
}

/** The sections whose cutting plane is marked on a view: each on the first chosen view that sees it edge-on. */
function sectionsOn(plan: ViewPlan, set: LetteredViews): readonly (readonly [string, ViewPlan])[] {
  if (plan.detail !== undefined) return [];
  return set.sections.filter(([, section]) => {
    const edgeOn = (view: ViewPlan): boolean => view.right[1] === section.section!.axis || view.up[1] === section.section!.axis;
    const home = set.chosen.plans.find((view) => view.section === undefined && edgeOn(view)) ?? set.chosen.plans.find((view) => view !== section && edgeOn(view));
    return home === plan;
  });
}
