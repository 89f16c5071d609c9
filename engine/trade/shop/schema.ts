import * as z from 'zod';
import { parseLength, type LengthUnit } from '../../units/length.js';
import { UserError } from '../../units/user-error.js';
import { riskKinds } from '../data/chances.js';
import { fitLimits } from '../fits.js';
import { findMaterial } from '../materials.js';
import { stockSizes } from '../stock.js';
import { findThread } from '../threads.js';
import { readDrills } from './drill-lists.js';
import { chanceOfOne, priceList, timesOfParts } from './estimates.js';

/** Runs a reader of the tables inside the schema: its sentence becomes the sentence of the problem. */
function reading<T>(read: (text: string) => T) {
  return z.union([z.string(), z.number()]).transform((value, context): T => {
    try {
      return read(String(value));
    } catch (fault) {
      if (!(fault instanceof UserError)) throw fault;
      context.addIssue({ code: 'custom', message: fault.message });
      return z.NEVER;
    }
  });
}

const machineKinds = ['lathe', 'mill', 'drill'] as const;
const slides = ['x', 'y', 'z', 'cross', 'top', 'saddle'] as const;
export const papers = ['A3', 'A4', 'letter', 'tabloid'] as const;

/** mm */
const longest = 100_000;

/** The shape of a shop file; lengths without a unit are counted in `unit`. */
export function shopSchema(unit: LengthUnit) {
  const length = reading((text) => {
    const mm = parseLength(text, { unit, what: 'length', sign: 'positive' });
    if (mm > longest) throw new UserError(`length "${text}" is more than any shop holds: at most ${longest / 1000} m.`);
    return mm;
  });
  const material = reading((text) => findMaterial(text).name);
  const fit = reading((text) => {
    fitLimits(text, 10);
    return text;
  });
  const turns = z.number().positive();
  const dial = z.strictObject({ 'per-turn': length, division: length, reads: z.enum(['direct', 'diameter']).default('direct') });
  const machine = z.strictObject({
    name: z.string().min(1),
    kind: z.enum(machineKinds),
    swing: length.optional(),
    'between-centres': length.optional(),
    power: z.number().positive().optional(),
    travels: z.partialRecord(z.enum(slides), length).default({}),
    speeds: z.union([z.array(turns).min(1), z.strictObject({ from: turns, to: turns }).refine(({ from, to }) => from <= to, 'the slowest speed must come first')]),
    dials: z.partialRecord(z.enum(slides), dial).default({}),
    'read-out': z.boolean().default(false),
  });
  const cutter = z.strictObject({ kind: z.string().default('end mill'), diameter: length, teeth: z.int().positive().default(4), material: z.enum(['hss', 'carbide']).default('hss') });
  const stock = z.strictObject({
    form: reading((text) => stockSizes(text)[0]?.form ?? text),
    size: length,
    width: length.optional(),
    length: length.optional(),
    material: material.optional(),
  });
  return z.strictObject({
    units: z.enum(['mm', 'in']).optional(),
    paper: z.preprocess((word) => papers.find((name) => name.toLowerCase() === String(word).toLowerCase()) ?? word, z.enum(papers)).optional(),
    machines: z.array(machine).optional(),
    drills: z.array(reading((text) => readDrills(text, unit))).optional(),
    taps: z.array(reading(findThread)).optional(),
    dies: z.array(reading(findThread)).optional(),
    reamers: z.array(length).optional(),
    cutters: z.array(cutter).optional(),
    stock: z.array(stock).optional(),
    fits: z.strictObject({ running: fit.optional(), sliding: fit.optional(), locating: fit.optional(), press: fit.optional() }).optional(),
    chances: z.partialRecord(z.enum(riskKinds), chanceOfOne).optional(),
    times: timesOfParts.optional(),
    prices: priceList.optional(),
  });
}

export type ShopFile = z.output<ReturnType<typeof shopSchema>>;
