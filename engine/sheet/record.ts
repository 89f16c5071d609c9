import type { Vector3 } from '../geometry/vector.js';
import type { Part, SetUp } from '../part/part.js';
import { machineFrame } from '../plan/machine-frame.js';
import { operationPlan, type OperationPlan, type ShopPlan } from '../plan/plan.js';
import type { HandComparison } from '../solid/hand.js';
import type { AlignedViews } from './compose/aligned-views.js';
import type { LaidOut, Rejected } from './compose/lay-out.js';
import type { NoteGroup } from './compose/notes-block.js';
import type { AxisDimensions } from './dimension/choose.js';
import type { Drawing } from './drawing.js';
import type { PaperBox } from './frame-box.js';
import type { FlowedSheet } from './operations/flow.js';
import { movedBox } from './place/plane.js';
import { phraseText, type Speech } from './say/texts.js';
import type { Box, PrintRecord, RecordedFrame, RecordedItem, RecordedRehearsal, RecordedView, Triple } from './print-record.js';

export interface RecordSource {
  readonly part: Part;
  readonly speech: Speech;
  readonly comparison: HandComparison;
  readonly distances: { readonly proofs: readonly AxisDimensions['proof'][] };
  readonly laidOut: LaidOut;
  readonly rejected: readonly Rejected[];
  readonly operations: readonly FlowedSheet[];
  readonly plan: ShopPlan;
  readonly drawing: Drawing;
  readonly angle: 'third' | 'first';
  readonly groups: readonly NoteGroup[];
  readonly rehearsal?: RecordedRehearsal | undefined;
}

const round = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;
const boxOf = (box: PaperBox): Box => [round(box.left), round(box.bottom), round(box.right), round(box.top)];

export function recordOf(source: RecordSource): PrintRecord {
  const { part, comparison, laidOut, drawing, speech } = source;
  const places = placesOf(laidOut);
  const views = laidOut.views.map((view): RecordedView => {
    const { sheet, origin } = places.get(view.plan.id)!;
    return {
      id: view.plan.id,
      sheet,
      scale: view.scale,
      scaleName: laidOut.details.find(({ plan }) => plan === view.plan)?.scale.name ?? laidOut.scale.name,
      right: view.plan.right,
      up: view.plan.up,
      eye: view.plan.eye,
      origin: [round(origin[0]), round(origin[1])],
      box: boxOf(movedBox(view.outline, origin)),
      section: view.plan.section === undefined ? null : { axis: view.plan.section.axis, value: round(view.plan.section.value) },
    };
  });
  const dimensions = laidOut.housed.map(({ item, plan }): RecordedItem => {
    const { sheet, origin } = places.get(plan.id)!;
    const box = laidOut.views.find((view) => view.plan === plan)!.texts.get(item.id)!;
    const { record } = item;
    const number = (value: number | undefined): number | null => (value === undefined ? null : round(value));
    return {
      id: item.id,
      kind: record.kind,
      feature: record.feature,
      axis: record.axis ?? null,
      nominal: number(record.nominal),
      lower: number(record.lower),
      upper: number(record.upper),
      count: record.count ?? 1,
      reference: record.reference === true,
      measure: record.measure,
      text: item.lines,
      view: plan.id,
      sheet,
      box: boxOf(movedBox(box, origin)),
    };
  });
  return {
    format: 'trialpiece print record',
    version: 1,
    part: part.name,
    title: drawing.title,
    hand: comparison.handed ? part.hand : 'none',
    handMakers: comparison.makers.map(({ cut, volume }) => ({ cut, volume: round(volume) })),
    units: speech.unit,
    projection: source.angle,
    paper: { name: laidOut.paper.name, orientation: laidOut.orientation, size: [drawing.sheets[0]!.size[0], drawing.sheets[0]!.size[1]] },
    scale: laidOut.scale.name,
    sheets: drawing.sheets.map(({ title }, i) => ({ number: i + 1, title })),
    views,
    dimensions,
    setUps: part.setUps.map((setUp) => ({ id: setUp.id, machine: setUp.machine, holding: setUp.holding, zero: setUp.zero, frame: frameOf(part, setUp) })),
    operations: part.operations.map((operation) => {
      const plan = operationPlan(source.plan, operation);
      return {
        number: operation.number,
        title: operation.title,
        setUp: operation.setUp,
        cutter: operation.cutter.name,
        cuts: operation.cuts.map(({ id }) => id),
        text: (plan?.instructions ?? []).map((phrase) => phraseText(phrase, speech)).join('. '),
        sheet: laidOut.sheets.length + 1 + source.operations.findIndex(({ operations }) => operations.includes(operation.number)),
        ...runningOf(plan),
      };
    }),
    notes: source.groups,
    checks: checksOf(source),
    ...(source.rehearsal === undefined ? {} : { rehearsal: source.rehearsal }),
  };
}

const triple = (vector: Vector3): Triple => [round(vector[0]), round(vector[1]), round(vector[2])];

export function frameOf(part: Part, setUp: SetUp): RecordedFrame {
  const { origin, x, y, z } = machineFrame(part, setUp);
  return { origin: triple(origin), x: triple(x), y: triple(y), z: triple(z) };
}

/** How an operation is run and set, by its plan. */
export function runningOf(plan: OperationPlan | undefined): Pick<PrintRecord['operations'][number], 'speed' | 'feed' | 'cutters' | 'settings' | 'lacks'> {
  const cutters = (plan?.cutters ?? []).map(({ name, kind, diameter, speed, feed, remark }) => ({
    name,
    work: kind,
    diameter: diameter === undefined ? null : round(diameter),
    speed: speed ?? null,
    feed,
    remark: remark ?? null,
  }));
  const figure = (value: number | undefined): number | null => (value === undefined ? null : round(value));
  const settings = (plan?.settings ?? []).map(({ what, x, y, z, diameter, text }) => ({ what, x: figure(x), y: figure(y), z: figure(z), diameter: figure(diameter), text }));
  return { speed: cutters[0]?.speed ?? null, feed: cutters[0]?.feed ?? null, cutters, settings, lacks: plan?.lacks ?? [] };
}

/** On which sheet each view stands, and where its origin is there. */
function placesOf(laidOut: LaidOut): ReadonlyMap<string, { readonly sheet: number; readonly origin: readonly [number, number] }> {
  const places = new Map<string, { sheet: number; origin: readonly [number, number] }>();
  laidOut.sheets.forEach((sheet, i) => {
    for (const { block, by } of sheet) {
      places.set(block.id, { sheet: i + 1, origin: by });
      if (block.id !== 'views') continue;
      for (const [id, origin] of (block as AlignedViews).origins) places.set(id, { sheet: i + 1, origin: [origin[0] + by[0], origin[1] + by[1]] });
    }
  });
  return places;
}

function checksOf({ distances, laidOut, rejected, part, operations }: RecordSource): PrintRecord['checks'] {
  const rows = new Set(operations.flatMap((sheet) => sheet.operations));
  return [
    ...distances.proofs.map((proof) => ({
      name: `distances along ${proof.axis} complete and single`,
      passed: proof.complete && proof.single,
      figures: { coordinates: proof.coordinates, implied: proof.implied, printed: proof.printed, rank: proof.rank },
    })),
    {
      name: 'every size has a place without overlap',
      passed: laidOut.views.every((view) => view.failed.length === 0),
      figures: { sizes: laidOut.housed.length },
    },
    {
      name: 'no larger standard scale fits',
      passed: true,
      figures: { chosen: laidOut.scale.name, larger: rejected.map((each) => `${each.scale} on ${each.paper}: ${each.reason}`).join('; ') },
    },
    {
      name: 'every operation has a row',
      passed: part.operations.every(({ number }) => rows.has(number)),
      figures: { operations: part.operations.length },
    },
  ];
}
