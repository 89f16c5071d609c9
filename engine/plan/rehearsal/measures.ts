import type { Cut, Phrase, Size } from '../../part/cut.js';
import type { Operation, Part } from '../../part/part.js';
import type { Station } from '../../part/station.js';
import type { Sized, Tolerance } from '../../part/tolerance.js';
import { stationName } from '../../part/author/phrases.js';
import { generalAngleDeviation, generalDeviation } from '../../trade/general-tolerance.js';

/** Something to measure on the piece after a rehearsed cut: it goes where the reading lies between the limits, and else not. */
export interface Measure {
  readonly operation: number;
  readonly what: Phrase;
  /** mm, or degrees where `measure` is an angle. */
  readonly nominal: number;
  readonly lower: number;
  readonly upper: number;
  readonly measure: 'length' | 'angle';
  /** The limits come from the general tolerance, not from the size itself. */
  readonly general: boolean;
  readonly instrument: string;
  /** For a thread: what must screw in, instead of limits. */
  readonly gauge?: string;
}

interface Limits {
  readonly lower: number;
  readonly upper: number;
  readonly general: boolean;
}

function limitsOf(value: number, tolerance: Tolerance | undefined): Limits {
  const general = generalDeviation(value);
  switch (tolerance?.kind) {
    case undefined:
      return { lower: value - general, upper: value + general, general: true };
    case 'plus-minus':
      return { lower: value - tolerance.value, upper: value + tolerance.value, general: false };
    case 'deviations':
    case 'fit':
      return { lower: value + tolerance.lower, upper: value + tolerance.upper, general: false };
    case 'maximum':
      return { lower: value - 2 * general, upper: value, general: false };
    case 'minimum':
      return { lower: value, upper: value + 2 * general, general: false };
  }
}

/** What reads a length to a fifth of what it may be off (common practice). */
function instrumentFor(inside: boolean, deep: boolean, limits: Limits): string {
  const width = limits.upper - limits.lower;
  if (inside) return width <= 0.06 ? 'plug gauge' : width <= 0.15 ? 'gauge pin or small-hole gauge' : 'drill shank or caliper';
  if (deep) return width <= 0.06 ? 'depth micrometer' : 'depth rod of the caliper';
  return width <= 0.06 ? 'micrometer' : 'caliper';
}

/** What is measured after an operation: the sizes of its cuts and where they lie, each once. */
export function measuresOf(part: Part, operation: Operation): readonly Measure[] {
  const seen = new Set<string>();
  return operation.cuts
    .flatMap((cut) => [...cut.sizes.flatMap((size) => ofSize(operation, cut, size)), ...placesOf(part, operation, cut)])
    .filter((measure) => {
      const key = JSON.stringify([measure.what, measure.nominal]);
      if (seen.has(key)) return false;
      seen.add(key);
      return true;
    });
}

function ofSize({ number }: Operation, cut: Cut, size: Size): readonly Measure[] {
  const long = (what: string, sized: Sized, inside: boolean, deep = false): Measure => {
    const limits = limitsOf(sized.value, sized.tolerance);
    return { operation: number, what: [`${cut.name}: ${what}`], nominal: sized.value, ...limits, measure: 'length', instrument: instrumentFor(inside, deep, limits) };
  };
  const each = (count: number): string => (count > 1 ? `, each of ${count}` : '');
  switch (size.kind) {
    case 'hole':
      return [long(`diameter${each(size.points.length)}`, size.diameter, true), ...(size.depth === undefined ? [] : [long(`full depth${each(size.points.length)}`, size.depth, false, true)])];
    case 'tapping': {
      const { thread, points, depth } = size;
      const gauge = `a screw ${thread.designation} enters by hand${depth === undefined ? ', right through' : ' to the depth'}`;
      const full = depth === undefined ? [] : [{ ...long(`full thread${each(points.length)}`, depth, false, true), gauge }];
      return full.length > 0 ? full : [{ operation: number, what: [`${cut.name}: thread${each(points.length)}`], nominal: thread.major, lower: thread.major, upper: thread.major, measure: 'length', general: false, instrument: 'screw', gauge }];
    }
    case 'countersink':
      return [long(`diameter at the mouth${each(size.points.length)}`, size.diameter, false)];
    case 'counterbore':
      return [long(`diameter${each(size.points.length)}`, size.diameter, true), long(`depth${each(size.points.length)}`, size.depth, false, true)];
    case 'diameter':
      return [long('diameter', size.diameter, size.internal)];
    case 'radius':
      return [{ ...long('radius', size.radius, false), instrument: 'radius gauge' }];
    case 'chamfer':
      return [long('chamfer', size.leg, false)];
    case 'angle': {
      const deviation = size.tolerance ?? generalAngleDeviation(10);
      return [{ operation: number, what: [`${cut.name}: angle`], nominal: size.degrees, lower: size.degrees - deviation, upper: size.degrees + deviation, measure: 'angle', general: size.tolerance === undefined, instrument: 'protractor' }];
    }
    case 'external-thread':
      return [{ operation: number, what: [`${cut.name}: thread`], nominal: size.thread.major, lower: size.root, upper: size.thread.major, measure: 'length', general: false, instrument: 'nut', gauge: `a nut ${size.thread.designation} runs on by hand without shake` }];
    case 'internal-thread':
      return [{ operation: number, what: [`${cut.name}: thread`], nominal: size.thread.major, lower: size.thread.minor, upper: size.thread.major, measure: 'length', general: false, instrument: 'screw', gauge: `a screw ${size.thread.designation} enters by hand to the depth, without shake` }];
    case 'arc-slot':
      return [long('width, all along', size.width, true), long('radius of the middle line', size.radius, false)];
    case 'arc-sides':
    case 'centre-hole':
      return [];
  }
}

/** Where the faces and axes of a cut lie, by the sizes that set them. */
function placesOf(part: Part, { number }: Operation, cut: Cut): readonly Measure[] {
  const stations = cut.stations.flatMap((id) => part.stations.find((station) => station.id === id) ?? []);
  return stations.flatMap((station): readonly Measure[] => {
    const found = placed(station);
    if (found === undefined || found.size.value < 1e-9) return [];
    const limits = limitsOf(found.size.value, found.size.tolerance);
    return [{ operation: number, what: found.what, nominal: found.size.value, ...limits, measure: 'length', instrument: instrumentFor(false, false, limits) }];
  });
}

function placed({ placing, name }: Station): { readonly what: Phrase; readonly size: Sized } | undefined {
  switch (placing.kind) {
    case 'datum':
    case 'derived':
      return undefined;
    case 'from':
      return { what: [`${stationName(placing.station)} to ${name}`], size: placing.distance };
    case 'row':
      return { what: [`pitch of the row of the ${stationName(placing.first)}`], size: placing.pitch };
    case 'pair':
      return { what: [`across the ${name}`], size: placing.width };
  }
}
