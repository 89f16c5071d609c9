import { dot } from '../../geometry/vector.js';
import type { Part } from '../../part/part.js';
import type { Solid } from '../../solid/model.js';
import { defaultShop, type Machine, type Shop } from '../../trade/shop/shop.js';
import type { LengthUnit } from '../../units/length.js';
import { cutForces } from '../fixture/cut-forces.js';
import { machineFrame, type MachineFrame } from '../machine-frame.js';
import { runsOf } from '../runs.js';
import { shopMachine } from '../shop-machine.js';

/** What a set-up needs of its machine, and what the machine has, mm; power in watts. */
export interface Need {
  readonly setUp: string;
  readonly machine: string;
  /** "swing", "between centres", "travel x" ... */
  readonly what: string;
  readonly needs: number;
  readonly has: number;
  readonly fits: boolean;
}

/** Of the motor's power so much comes to the cutter through belts and gears: common practice, 0.6 to 0.8. */
const EFFICIENCY = 0.7;

/** Room for a cutter to run in and out beside the work, each side, mm: common practice. */
const RUN_OUT = 6;

/**
 * Whether the blank of a part goes on the machines of a shop, in each set-up: on the lathe the circle that it sweeps and its
 * length, on the mill the ways that the cutter has to go over it, and the power of the heaviest usual cut. Work that comes
 * back into a set-up asks for the most of both times.
 */
export function machineNeeds(part: Part, blank: Solid, unit: LengthUnit, shop: Shop = defaultShop): readonly Need[] {
  const most = new Map<string, Need>();
  for (const need of needsOfRuns(part, blank, unit, shop)) {
    const key = `${need.setUp} ${need.what}`;
    const known = most.get(key);
    if (known === undefined || need.needs > known.needs) most.set(key, need);
  }
  return [...most.values()];
}

function needsOfRuns(part: Part, blank: Solid, unit: LengthUnit, shop: Shop): readonly Need[] {
  return runsOf(part).flatMap(({ setUp, operations }): readonly Need[] => {
    const machine = shopMachine(shop, setUp.machine);
    if (machine === undefined || setUp.machine === 'bench') return [];
    const frame = machineFrame(part, setUp);
    const reach = reachOf(blank, frame);
    const power = Math.max(0, ...cutForces({ part, setUp, frame, operations, shop, unit }).map((force) => force.power)) / EFFICIENCY;
    const wants: readonly (readonly [string, number, number | undefined])[] =
      machine.kind === 'lathe'
        ? [['swing', 2 * reach.radius, machine.swing], ['between centres', reach.z, machine.betweenCentres]]
        : [['travel x', reach.x + 2 * RUN_OUT, travel(machine, 'x')], ['travel y', reach.y + 2 * RUN_OUT, travel(machine, 'y')], ['travel z', reach.z, travel(machine, 'z')]];
    return [...wants, ['power, W', power, machine.power] as const].flatMap(([what, needs, has]) => (has === undefined ? [] : [{ setUp: setUp.id, machine: machine.name, what, needs, has, fits: needs <= has }]));
  });
}

const travel = (machine: Machine, slide: 'x' | 'y' | 'z'): number | undefined => machine.travels[slide];

/** How far a blank reaches along the axes of a machine, and about the axis of its spindle. */
function reachOf({ positions }: Solid, { x, y, z, origin }: MachineFrame): { readonly x: number; readonly y: number; readonly z: number; readonly radius: number } {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  let radius = 0;
  for (let i = 0; i < positions.length; i += 3) {
    const point = [positions[i]! - origin[0], positions[i + 1]! - origin[1], positions[i + 2]! - origin[2]] as const;
    const at = [dot(point, x), dot(point, y), dot(point, z)] as const;
    at.forEach((value, k) => {
      low[k] = Math.min(low[k]!, value);
      high[k] = Math.max(high[k]!, value);
    });
    radius = Math.max(radius, Math.hypot(at[0], at[1]));
  }
  return { x: high[0]! - low[0]!, y: high[1]! - low[1]!, z: high[2]! - low[2]!, radius };
}

export interface MachineChange extends Need {
  readonly neededBefore: number;
  readonly fitted: boolean;
}

/** What each set-up needs at both sizes. */
export function machineChanges(before: readonly Need[], after: readonly Need[]): readonly MachineChange[] {
  return after.map((need) => {
    const was = before.find(({ setUp, what }) => setUp === need.setUp && what === need.what);
    return { ...need, neededBefore: was?.needs ?? need.needs, fitted: was?.fits ?? need.fits };
  });
}
