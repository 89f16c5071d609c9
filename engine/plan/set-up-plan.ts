import { stationName } from '../part/author/phrases.js';
import type { Part, SetUp } from '../part/part.js';
import type { Dial, Machine, SlideName } from '../trade/shop/shop.js';
import { formatLength } from '../units/format.js';
import type { LengthUnit } from '../units/length.js';
import type { Extents } from './extents.js';
import { coordinate } from './figures.js';
import { toMachine, type MachineFrame } from './machine-frame.js';
import { machineLetter } from './machine-words.js';
import { table, type Reader, type SettingBlock } from './setting.js';
import { workingZero } from './working-zero.js';

/** Where zero is, in a sentence, each axis by the machine's letter. */
export function zeroWords(part: Part, setUp: SetUp, frame: MachineFrame, unit: LengthUnit): readonly string[] {
  const stations = workingZero(part, setUp);
  if (stations.length === 0) return [];
  const onBed = setUp.machine === 'lathe';
  // Across the bed of a lathe zero is the axis on which the work turns, whatever it is called.
  const named = onBed ? stations.filter(({ axis }) => machineLetter(frame, axis) === 'Z') : stations;
  const square = named.filter(({ axis }) => machineLetter(frame, axis) !== undefined);
  const words = square.map(({ axis, id }) => `${machineLetter(frame, axis) ?? ''} ${stationName(id)}`).sort();
  const meeting = named.filter((station) => !square.includes(station)).map(({ id }) => stationName(id));
  const others = ['X', 'Y', 'Z'].filter((letter) => words.every((word) => !word.startsWith(letter)));
  if (meeting.length > 0) words.push(`${others.join(' and ')} where ${meeting.join(' and ')} meet`);
  const later = setUp.zero.flatMap((id) => part.stations.find((station) => station.id === id && !stations.includes(station)) ?? []);
  const moved = later.map((station) => {
    const point = [0, 0, 0] as [number, number, number];
    point['xyz'.indexOf(station.axis)] = station.value;
    return `The ${stationName(station.id)} is not there yet: it will be at Z ${coordinate(toMachine(frame, point)[2], unit)}.`;
  });
  return [`Zero (marked 0): ${words.join('; ')}.`, ...moved];
}

/** Where the work's edges stand as it is held, counted from the zero: what to touch in order to find it. */
export function pickUp(frame: MachineFrame, extents: Extents | undefined, reader: Reader): SettingBlock | undefined {
  if (extents === undefined || frame.setUp.machine === 'lathe' || frame.setUp.machine === 'bench') return undefined;
  const edges = [
    ['left', 'x', extents.x.low],
    ['right', 'x', extents.x.high],
    ['near', 'y', extents.y.low],
    ['far', 'y', extents.y.high],
    ['top', 'z', extents.z.high],
  ] as const;
  const rows = edges.flatMap(([what, axis, value]) =>
    value === undefined || !frame.known[axis] ? [] : [[what, `${axis.toUpperCase()} ${coordinate(value, reader.unit)}`, reader.dial(axis, axis === 'z' ? -value : value)]],
  );
  return rows.length === 0 ? undefined : table(['Edge', 'is at', 'dial'], rows, true);
}

/** How a machine's figures are read: by which dials, and what is to be said of them once. */
export interface Counting {
  /** For the head of each set-up. */
  readonly short: string;
  readonly readout: boolean;
  /** What a division of the cross slide takes off the diameter. */
  readonly worth?: string;
}

/** @param machine of the shop; undefined where it has none of the kind. */
export function countingWords(setUp: SetUp, machine: Machine | undefined): Counting | undefined {
  if (setUp.machine === 'bench') return undefined;
  if (machine === undefined) return { short: `The shop has no ${setUp.machine}: neither speeds nor dials are known.`, readout: true };
  if (machine.readout) return { short: 'Figures as the read-out shows them.', readout: true };
  const lathe = setUp.machine === 'lathe';
  const slides: readonly (readonly [SlideName, string])[] = lathe ? [['cross', 'cross slide'], ['saddle', 'carriage']] : [['x', 'X'], ['y', 'Y'], ['z', 'Z']];
  const shown = slides.flatMap(([slide, word]) => {
    const dial = machine.dials[slide];
    return dial === undefined ? [] : [{ word, says: `${dialLength(dial.perTurn, dial)} a turn, ${dialLength(dial.division, dial)} a division` }];
  });
  if (shown.length === 0) return { short: 'Dials not known: figures alone.', readout: true };
  const kinds = [...new Set(shown.map(({ says }) => says))];
  const sizes = kinds.map((says) => `${shown.filter((each) => each.says === says).map(({ word }) => word).join(', ')} ${says}`).join('; ');
  const cross = lathe ? machine.dials.cross : undefined;
  return { short: `Dials: ${sizes}.`, readout: false, ...(cross === undefined ? {} : { worth: dialLength(cross.reads === 'diameter' ? cross.division : 2 * cross.division, cross) }) };
}

/** How all settings are counted, in sentences for the head of the sheets. */
export function countingSentences(countings: readonly Counting[], each: 'set-up' | 'operation' = 'set-up'): readonly string[] {
  const worth = countings.find((each) => each.worth !== undefined)?.worth;
  return [
    'X, Y and Z are the machine\u2019s, as each picture shows them and as the cutter moves over the work: X to the right, Y away from you, Z up; on the lathe Z along the bed, minus toward the chuck. They count from the zero of the set-up, which the pictures mark with a target and a 0 in a square.',
    `Settings are for the finished size: where metal is left for a later cut, stop short by it. Each picture shows the work as it sits when its ${each} is done.`,
    ...(countings.every(({ readout }) => readout)
      ? []
      : [
          'Dials: t whole turns + d divisions, forward from zero: right, away and down; on the lathe in (out for bores) and toward the chuck. With \u2212, go back so many turns and somewhat more, then come forward to the divisions. Come to every setting forward; if past it, go back half a turn and come again.',
        ]),
    ...(worth === undefined ? [] : [`A division of the cross slide takes ${worth} off the diameter: near the size cut, measure, and go in by what is left.`]),
  ];
}

/** Lengths of a dial in its own system: of the inch where a division is whole or half thousandths. */
function dialLength(mm: number, { division }: Dial): string {
  const halves = division / 0.0127;
  const system = Math.abs(halves - Math.round(halves)) < 1e-6 ? 'in' : 'mm';
  return `${formatLength(mm, system)} ${system}`;
}
