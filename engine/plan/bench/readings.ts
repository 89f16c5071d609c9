import { dot } from '../../geometry/vector.js';
import { indexOf } from '../../part/author/directions.js';
import { stationName } from '../../part/author/phrases.js';
import type { Cut, PhraseSize } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import type { Station } from '../../part/station.js';
import type { Sized } from '../../part/tolerance.js';
import { extentsOf, type Extents } from '../extents.js';
import { directionOnMachine, toMachine, type MachineFrame } from '../machine-frame.js';
import type { OperationState } from '../states/state.js';

/** A box to write in. `A` names a reading that the sum beside it takes up. */
export interface Blank {
  readonly blank: '' | 'A';
}

/** What is measured: words, sizes and boxes in the order in which they are read. */
export interface Reading {
  readonly what: string;
  readonly pieces: readonly (string | PhraseSize | Blank)[];
}

const size = ({ value, tolerance }: Sized, sign?: PhraseSize['sign']): PhraseSize => ({ length: value, ...(tolerance === undefined ? {} : { tolerance }), ...(sign === undefined ? {} : { sign }) });
const bare = ({ value }: { readonly value: number }): PhraseSize => ({ length: value });
const A: Blank = { blank: 'A' };
const box: Blank = { blank: '' };

/** More than these are no help at the bench. */
const most = 5;

/** What to measure at an operation, with the sum from what is there to what is wanted. Nothing for what is not measured in lengths. */
export function readingsOf(part: Part, frame: MachineFrame, state: OperationState): readonly Reading[] {
  const flat = state.operation.cuts.some((cut) => cut.forms.some(({ kind }) => kind !== 'revolution'));
  const extents = flat ? extentsOf(state.after, frame) : { x: {}, y: {}, z: {} };
  const all = state.operation.cuts.flatMap((cut) => [...sizeReadings(cut, frame.setUp.machine === 'lathe'), ...faceReadings(part, frame, cut, extents), ...widthReadings(part, cut)]);
  const left = (state.operation.leave ?? []).find((piece) => typeof piece === 'object');
  const once = all.filter(({ what }, i) => all.findIndex((other) => other.what === what) === i).slice(0, most);
  return left === undefined ? once : once.map((reading) => leaving(reading, left));
}

/** A reading whose sum is cut short by what is left for a later cut. */
function leaving({ what, pieces }: Reading, left: PhraseSize): Reading {
  const made = pieces.indexOf(', made ');
  return made < 0 ? { what, pieces } : { what, pieces: [...pieces.slice(0, made), ', but leave ', left, ...pieces.slice(made)] };
}

function sizeReadings(cut: Cut, lathe: boolean): readonly Reading[] {
  return cut.sizes.flatMap((each): readonly Reading[] => {
    switch (each.kind) {
      case 'diameter':
        return [each.internal ? bored(cut.name, each.diameter) : turned(cut.name, each.diameter)];
      case 'counterbore':
        return [...(lathe ? [bored(cut.name, each.diameter)] : []), { what: `depth of ${cut.name}`, pieces: [`Depth of ${cut.name}: `, size(each.depth), ' less A ', A, ' = to go ', box, ', made ', box] }];
      case 'hole':
        if (each.finish === 'bored') return [bored(cut.name, each.diameter)];
        if (each.finish === 'reamed') return [{ what: cut.name, pieces: [`${cut.name}: plug `, size(each.diameter, 'diameter'), ' goes in ', box, '; made ', box] }];
        return each.depth === undefined ? [] : [{ what: cut.name, pieces: [`${cut.name}: depth wanted `, size(each.depth), '; made ', box] }];
      case 'countersink':
        return [{ what: cut.name, pieces: [`${cut.name}: mouth wanted `, size(each.diameter, 'diameter'), '; made ', box] }];
      case 'arc-slot':
        return [{ what: cut.name, pieces: [`${cut.name}: width `, size(each.width), ' less A ', A, ' = to go ', box, ', made ', box] }];
      case 'tapping':
      case 'internal-thread':
      case 'external-thread':
      case 'radius':
      case 'arc-sides':
      case 'angle':
      case 'chamfer':
      case 'centre-hole':
        return [];
    }
  });
}

const turned = (name: string, diameter: Sized): Reading => ({ what: name, pieces: [`${name}: \u2300 A `, A, ' less ', size(diameter), ' = take off ', box, ', made ', box] });
const bored = (name: string, diameter: Sized): Reading => ({ what: name, pieces: [`${name}: `, size(diameter), ' less \u2300 A ', A, ' = take out ', box, ', made ', box] });

/** Faces right across the work: over all from the face opposite; floors square to the cutter: from the top. */
function faceReadings(part: Part, frame: MachineFrame, cut: Cut, extents: Extents): readonly Reading[] {
  return cut.forms.flatMap((form): readonly Reading[] => {
    if (form.kind === 'half-space') {
      const along = directionOnMachine(frame, form.normal).findIndex((value) => Math.abs(value) > 1 - 1e-9);
      const axis = (['x', 'y', 'z'] as const)[along];
      if (axis === undefined) return [];
      const { low, high } = extents[axis];
      if (low === undefined || high === undefined) return [];
      const wanted: Sized = { value: high - low, purpose: 'size', ...toleranceBetween(part, cut, high - low) };
      return [{ what: `over all at ${cut.name}`, pieces: [`Over all at ${cut.name}: A `, A, ' less ', size(wanted), ' = take off ', box, ', made ', box] }];
    }
    if (frame.setUp.machine === 'lathe') return [];
    return floors(part, frame, cut).flatMap((station): readonly Reading[] => {
      const top = extents.z.high;
      if (top === undefined) return [];
      const point = [0, 0, 0] as [number, number, number];
      point[indexOf(station.axis)] = station.value;
      const depth = top - toMachine(frame, point)[2];
      if (depth < 1e-6) return [];
      return [{ what: `depth to ${station.id}`, pieces: [`Depth to ${stationName(station.id)}: `, bare({ value: depth }), ' less A ', A, ' = to go ', box, ', made ', box] }];
    });
  });
}

/** Stations of a cut's faces that lie square to the cutter. */
function floors(part: Part, frame: MachineFrame, cut: Cut): readonly Station[] {
  const ids = Object.values(cut.faces).flatMap(({ stations }) => stations);
  return part.stations.filter(({ id, axis }) => {
    const along = [0, 0, 0] as [number, number, number];
    along[indexOf(axis)] = 1;
    return ids.includes(id) && Math.abs(dot(along, frame.z)) > 1 - 1e-9;
  });
}

/** Slots and pockets: the width between two walls that a cut makes as a pair. */
function widthReadings(part: Part, cut: Cut): readonly Reading[] {
  const ids = new Set(Object.values(cut.faces).flatMap(({ stations }) => stations));
  return part.stations.flatMap((station): readonly Reading[] => {
    const { placing } = station;
    if (placing.kind !== 'pair' || !ids.has(station.id) || !ids.has(placing.other) || station.id > placing.other) return [];
    return [{ what: `width ${station.id}`, pieces: [`Over ${stationName(station.id)}: `, size(placing.width), ' less A ', A, ' = to go ', box, ', made ', box] }];
  });
}

/** The tolerance of the size that a face makes with the one opposite, where the part says that size. */
function toleranceBetween(part: Part, cut: Cut, value: number): Pick<Sized, 'tolerance'> {
  const ids = Object.values(cut.faces).flatMap(({ stations }) => stations);
  for (const { id, placing } of part.stations) {
    const said = placing.kind === 'pair' ? placing.width : placing.kind === 'from' ? placing.distance : undefined;
    if (said?.tolerance !== undefined && ids.includes(id) && Math.abs(said.value - value) < 1e-6) return { tolerance: said.tolerance };
  }
  return {};
}
