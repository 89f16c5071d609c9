import { LineCounter, parseDocument } from 'yaml';
import type { LengthUnit } from '../../units/length.js';
import { UserError } from '../../units/user-error.js';
import { riskKinds } from '../data/chances.js';
import { problemSentences } from './problems.js';
import { shopSchema, type ShopFile } from './schema.js';
import { plainValue, structureProblems } from './structure-problems.js';
import { defaultShop, type Machine, type Shop } from './shop.js';

/** Either a shop, or the sentences that say what is wrong with the file, each with its line and column. */
export interface ShopReading {
  readonly shop?: Shop;
  readonly problems: readonly string[];
}

const dialKeys = ['per-turn', 'division', 'reads'];
const keysAt: readonly (readonly [pattern: RegExp, keys: readonly string[]])[] = [
  [/^$/, ['units', 'paper', 'machines', 'drills', 'taps', 'dies', 'reamers', 'cutters', 'stock', 'fits', 'chances', 'times', 'prices']],
  [/^machines\/\d+$/, ['name', 'kind', 'swing', 'between-centres', 'power', 'travels', 'speeds', 'dials', 'read-out']],
  [/^machines\/\d+\/dials\/\w+$/, dialKeys],
  [/^machines\/\d+\/(travels|dials)$/, ['x', 'y', 'z', 'cross', 'top', 'saddle']],
  [/^machines\/\d+\/speeds$/, ['from', 'to']],
  [/^cutters\/\d+$/, ['kind', 'diameter', 'teeth', 'material']],
  [/^stock\/\d+$/, ['form', 'size', 'width', 'length', 'material']],
  [/^fits$/, ['running', 'sliding', 'locating', 'press']],
  [/^chances$/, riskKinds],
  [/^prices$/, ['hour', 'materials']],
];
const allowedKeys = (path: readonly PropertyKey[]): readonly string[] => keysAt.find(([pattern]) => pattern.test(path.map(String).join('/')))?.[1] ?? [];

type MachineFile = NonNullable<ShopFile['machines']>[number];

function machine(file: MachineFile): Machine {
  const dials = Object.entries(file.dials).map(([slide, dial]) => [slide, { perTurn: dial['per-turn'], division: dial.division, reads: dial.reads }]);
  return {
    name: file.name,
    kind: file.kind,
    ...(file.swing === undefined ? {} : { swing: file.swing }),
    ...(file['between-centres'] === undefined ? {} : { betweenCentres: file['between-centres'] }),
    ...(file.power === undefined ? {} : { power: file.power }),
    travels: file.travels as Machine['travels'],
    speeds: file.speeds,
    dials: Object.fromEntries(dials) as Machine['dials'],
    readout: file['read-out'],
  };
}

function shopOf(file: ShopFile): Shop {
  const unit = file.units ?? defaultShop.unit;
  const { running, sliding, locating, press } = { ...defaultShop.fits, ...file.fits };
  return {
    unit,
    machines: file.machines?.map(machine) ?? defaultShop.machines,
    ...(file.drills === undefined ? {} : { drills: [...new Set(file.drills.flat())].sort((a, b) => a.diameter - b.diameter) }),
    ...(file.taps === undefined ? {} : { taps: file.taps }),
    ...(file.dies === undefined ? {} : { dies: file.dies }),
    ...(file.reamers === undefined ? {} : { reamers: [...file.reamers].sort((a, b) => a - b) }),
    ...(file.cutters === undefined ? {} : { cutters: file.cutters }),
    ...(file.stock === undefined
      ? {}
      : {
          stock: file.stock.map(({ form, size, width, length, material }) => ({
            name: `${form} ${size} mm`,
            form,
            unit,
            size,
            ...(width === undefined ? {} : { width }),
            ...(length === undefined ? {} : { length }),
            ...(material === undefined ? {} : { material }),
            source: 'on the shelf',
          })),
        }),
    paper: file.paper ?? defaultShop.paper,
    ...(file.units === undefined && file.paper === undefined
      ? {}
      : { said: { ...(file.units === undefined ? {} : { unit: file.units }), ...(file.paper === undefined ? {} : { paper: file.paper }) } }),
    fits: { running: running ?? defaultShop.fits.running, sliding: sliding ?? defaultShop.fits.sliding, locating: locating ?? defaultShop.fits.locating, press: press ?? defaultShop.fits.press },
    ...(file.chances === undefined ? {} : { chances: file.chances as NonNullable<Shop['chances']> }),
    ...(file.times === undefined ? {} : { times: file.times }),
    ...(file.prices === undefined ? {} : { prices: file.prices }),
  };
}

/** Reads a shop file and finds everything that is wrong with it. An empty file is the default shop. */
export function checkShop(text: string): ShopReading {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false, version: '1.2' });
  const faults = structureProblems(document, lines, text);
  if (faults.length > 0) return { problems: faults };
  const plain = plainValue(document);
  if (plain === undefined) return { problems: ['line 1, column 1: the references of the file multiply beyond use: write its lists out.'] };
  const value = plain.value ?? {};
  const unit: LengthUnit = typeof value === 'object' && value !== null && 'units' in value && value.units === 'in' ? 'in' : 'mm';
  const parsed = shopSchema(unit).safeParse(value);
  return parsed.success ? { shop: shopOf(parsed.data), problems: [] } : { problems: problemSentences(document, lines, parsed.error.issues, allowedKeys) };
}

/**
 * The shop that a file describes; what it does not say is a typical small lathe and mill.
 * @param fileName is named in the sentence of an error.
 * @throws UserError for the first thing that is wrong, with its line and column.
 */
export function readShop(text: string, fileName = 'shop.yaml'): Shop {
  const { shop, problems } = checkShop(text);
  if (shop !== undefined) return shop;
  const more = problems.length > 1 ? ` (and ${problems.length - 1} more)` : '';
  throw new UserError(`${fileName}, ${(problems[0] ?? 'cannot be read').replace(/\.$/, '')}${more}.`);
}
