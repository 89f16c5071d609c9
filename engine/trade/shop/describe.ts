import { formatLength } from '../../units/format.js';
import type { Dial, Machine, Shop } from './shop.js';

/** What a shop has, as pairs of what and how it was read; a list that its file does not give says so. */
export function describeShop(shop: Shop): readonly (readonly [what: string, value: string])[] {
  const length = (mm: number): string => `${formatLength(mm, shop.unit)} ${shop.unit}`;
  const lists: readonly (readonly [string, readonly string[] | undefined])[] = [
    ['drills', shop.drills?.map(({ name }) => name)],
    ['taps', shop.taps?.map(({ designation }) => designation)],
    ['dies', shop.dies?.map(({ designation }) => designation)],
    ['reamers', shop.reamers?.map(length)],
    ['cutters', shop.cutters?.map(({ kind, diameter, material, teeth }) => `${kind} ${length(diameter)} ${material} of ${teeth}`)],
    ['stock', shop.stock?.map(({ form, size, width, length: long, material }) => `${form} ${[size, width].filter((side) => side !== undefined).map(length).join(' x ')}${long === undefined ? '' : `, ${length(long)} long`}${material === undefined ? '' : `, ${material}`}`)],
  ];
  return [
    ['units', shop.unit],
    ['paper', shop.paper],
    ...(shop.machines.length === 0 ? [['machines', 'none'] as const] : []),
    ...shop.machines.map((machine): [string, string] => [machine.kind, machineInWords(machine, length)]),
    ...lists.map(([what, names]): [string, string] => [what, names === undefined ? 'not listed: all in the tables count as at hand' : names.length === 0 ? 'none' : `${names.length}: ${names.join('; ')}`]),
    ...Object.entries(shop.fits).map(([use, fit]): [string, string] => [`${use} fit`, String(fit)]),
    ...Object.entries(shop.chances ?? {}).map(([kind, chance]): [string, string] => [`chance, ${kind}`, String(chance)]),
    ...Object.entries(shop.times ?? {}).map(([part, times]): [string, string] => [`minutes, ${part}`, Object.entries(times).map(([number, minutes]) => `operation ${number}: ${minutes}`).join('; ')]),
    ...(shop.prices === undefined ? [] : [['prices', [`an hour ${shop.prices.hour}`, ...Object.entries(shop.prices.materials).map(([name, price]) => `a kilogram of ${name} ${price}`)].join('; ')] as const]),
  ];
}

function machineInWords({ name, swing, betweenCentres, power, travels, speeds, dials, readout }: Machine, length: (mm: number) => string): string {
  const parts = [
    ...(swing === undefined ? [] : [`swing ${length(swing)}`]),
    ...(betweenCentres === undefined ? [] : [`${length(betweenCentres)} between centres`]),
    ...(power === undefined ? [] : [`${power} W`]),
    ...Object.entries(travels).map(([slide, travel]) => `${slide} travel ${length(travel)}`),
    'from' in speeds ? `any speed from ${speeds.from} to ${speeds.to} a minute` : `speeds ${speeds.join(', ')} a minute`,
    ...Object.entries(dials).map(([slide, dial]) => `${slide} dial ${dialInWords(dial, length)}`),
    readout ? 'with read-out' : 'no read-out',
  ];
  return `${name}: ${parts.join('; ')}`;
}

const dialInWords = ({ perTurn, division, reads }: Dial, length: (mm: number) => string): string =>
  `${length(perTurn)} a turn by ${length(division)}${reads === 'diameter' ? ', reading the diameter' : ''}`;
