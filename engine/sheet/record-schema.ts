import * as z from 'zod';
import type { PrintRecord } from './print-record.js';
import { rehearsalSchema } from './rehearsal-schema.js';

const finite = z.number();
const numbered = z.int().positive();
const name = z.string().min(1);
const axis = z.enum(['x', 'y', 'z']);
const direction = z.enum(['+x', '-x', '+y', '-y', '+z', '-z']);
const point = z.tuple([finite, finite]).describe('x and y on the sheet, mm from its lower left');
const triple = z.tuple([finite, finite, finite]);
const box = z.tuple([finite, finite, finite, finite]).describe('left, bottom, right, top on the sheet, mm');

const view = z.strictObject({
  id: name,
  sheet: numbered,
  scale: z.number().positive().describe('paper mm for one mm of the part'),
  scaleName: z.string().regex(/^\d+:\d+$/),
  right: direction.describe('direction of the part that points right on paper'),
  up: direction.describe('direction of the part that points up on paper'),
  eye: direction.describe('direction of the part from the paper to the eye'),
  origin: point.describe('where the zero of the part stands'),
  box: box.describe('the outline of the view'),
  section: z.strictObject({ axis, value: finite.describe('mm along the axis') }).nullable(),
});

const dimension = z.strictObject({
  id: name,
  kind: z.enum(['distance', 'diameter', 'radius', 'angle', 'chamfer', 'hole', 'thread', 'centre hole', 'texture', 'width', 'note']),
  feature: name,
  axis: axis.nullable().describe('the axis of the part along which a distance runs'),
  nominal: finite.nullable().describe('mm, degrees, or micrometres of roughness, as `measure` and `kind` say'),
  lower: finite.nullable().describe('least size allowed, mm; null where only the general tolerance counts'),
  upper: finite.nullable().describe('greatest size allowed, mm; null where only the general tolerance counts'),
  count: numbered.describe('how many like features, or equal pitches, the one text stands for'),
  reference: z.boolean().describe('printed in brackets: follows from other sizes'),
  measure: z.enum(['length', 'angle', 'note']),
  text: z.array(name).min(1).describe('lines as printed'),
  view: name,
  sheet: numbered,
  box: box.describe('the text'),
});

const setUp = z.strictObject({
  id: name,
  machine: z.enum(['lathe', 'mill', 'drill', 'bench']),
  holding: name,
  zero: z.array(name).describe('stations from which is measured'),
  frame: z
    .strictObject({ origin: triple, x: triple, y: triple, z: triple })
    .describe('zero and axes of the machine, in coordinates of the part: a setting stands at origin + x X + y Y + z Z'),
});

const turns = z.number().positive().nullable().describe('turns a minute; null where turned by hand or not known');

const cutter = z.strictObject({
  name,
  work: name,
  diameter: z.number().positive().nullable().describe('of the cutter, or of the work on a lathe, mm'),
  speed: turns,
  feed: z.string(),
  remark: name.nullable(),
});

const setting = z.strictObject({
  what: name,
  x: finite.nullable().describe('to the right on mill and drill, mm from zero; null where it is not set'),
  y: finite.nullable().describe('away from the person on mill and drill, mm from zero'),
  z: finite.nullable().describe('up on mill and drill, along the bed to the tailstock on a lathe, mm from zero'),
  diameter: z.number().positive().nullable().describe('to turn or bore, mm'),
  text: name.describe('what is printed of it'),
});

const operation = z.strictObject({
  number: numbered,
  title: name,
  setUp: name,
  cutter: name,
  cuts: z.array(name),
  text: z.string().describe('what to do, as printed'),
  sheet: numbered,
  speed: turns,
  feed: z.string().nullable(),
  cutters: z.array(cutter),
  settings: z.array(setting),
  lacks: z.array(z.strictObject({ toGet: name, instead: name })).describe('what the shop does not have, and what to do without it'),
});

/** The shape of the record of a print (`--record`); published as templates/print-record.schema.json. */
export const printRecordSchema = z
  .strictObject({
    format: z.literal('trialpiece print record'),
    version: z.literal(1),
    part: name,
    title: name,
    hand: z.enum(['right', 'left', 'none']).describe('none: the part is not handed'),
    handMakers: z.array(z.strictObject({ cut: name, volume: z.number().positive().describe('mm3 by which the hands differ at the cut') })),
    units: z.enum(['in', 'mm']).describe('the unit of the texts; numbers are mm always'),
    projection: z.enum(['third', 'first']),
    paper: z.strictObject({ name, orientation: z.enum(['portrait', 'landscape']), size: z.tuple([z.number().positive(), z.number().positive()]) }),
    scale: z.string().regex(/^\d+:\d+$/),
    sheets: z.array(z.strictObject({ number: numbered, title: name })).min(1),
    views: z.array(view).min(1),
    dimensions: z.array(dimension).min(1),
    setUps: z.array(setUp).min(1),
    operations: z.array(operation).min(1),
    notes: z.array(z.strictObject({ heading: name, paragraphs: z.array(name) })),
    rehearsal: rehearsalSchema.optional(),
    checks: z.array(z.strictObject({ name, passed: z.boolean(), figures: z.record(z.string(), z.union([finite, z.string(), z.boolean()])) })).min(1),
  })
  .meta({ title: 'Print record', description: 'What a print of a part says. Lengths in mm, angles in degrees.' }) satisfies z.ZodType<PrintRecord>;

/** The same as a JSON Schema (draft 2020-12), as text. */
export const printRecordJsonSchema = (): string => `${JSON.stringify(z.toJSONSchema(printRecordSchema), null, 2)}\n`;
