import type { Solid } from '../../solid/model.js';
import { directionOnMachine, type MachineFrame } from '../machine-frame.js';
import { areaBetween, type Corners } from './bands.js';
import { cornersOf, normalOf, type Placed } from './placed.js';

/** What the work shows to jaws that close on it about the spindle, between two places along it. Lengths mm. */
export interface RoundGrip {
  /** How long the outermost surface is there. */
  readonly length: number;
  readonly diameter: number;
  /** Whether the outermost surface is round about the spindle. */
  readonly round: boolean;
  /** Flat sides along the spindle, all told. */
  readonly flats: number;
  /** Indices of the faces that the jaws touch. */
  readonly faces: readonly number[];
  /** Area of everything that looks outward there, mm2. */
  readonly area: number;
  /** Of the widest hole in it along the spindle; 0 where it is solid. */
  readonly bore: number;
}

/** Undefined where there is no metal between the two places, z in the machine's count. */
export function roundGrip(placed: Placed, frame: MachineFrame, low: number, high: number): RoundGrip | undefined {
  const { solid } = placed;
  const outside: { corners: Corners; face: number; reach: number; flat: boolean }[] = [];
  let bore = 0;
  solid.faceOfTriangle.forEach((face, triangle) => {
    const corners = cornersOf(placed, triangle);
    const normal = normalOf(placed, corners);
    if (Math.abs(normal[2]) > 0.999) return;
    const [bottom, top] = [Math.min(corners[0][2], corners[1][2], corners[2][2]), Math.max(corners[0][2], corners[1][2], corners[2][2])];
    if (top < low + 1e-6 || bottom > high - 1e-6) return;
    const reach = Math.max(...corners.map(([x, y]) => Math.hypot(x, y)));
    const outward = normal[0] * corners[0][0] + normal[1] * corners[0][1];
    const surface = solid.surfaces[solid.faces[face]!.surface]!;
    if (outward > 0) outside.push({ corners, face, reach, flat: surface.kind === 'plane' });
    else if (surface.kind === 'cylinder' && Math.abs(directionOnMachine(frame, surface.axis)[2]) > 0.999) bore = Math.max(bore, 2 * reach);
  });
  if (outside.length === 0) return undefined;
  const most = Math.max(...outside.map(({ reach }) => reach));
  const touched = outside.filter(({ reach }) => reach > most - 0.02);
  const heights = touched.flatMap(({ corners }) => corners.map(([, , z]) => Math.min(high, Math.max(low, z))));
  const faces = [...new Set(touched.map(({ face }) => face))];
  return {
    length: Math.max(...heights) - Math.min(...heights),
    diameter: 2 * exactRadius(solid, faces, most),
    round: touched.every(({ flat }) => !flat),
    flats: new Set(outside.filter(({ flat }) => flat).map(({ face }) => solid.faces[face]!.surface)).size,
    faces,
    area: areaBetween(outside.map(({ corners }) => corners), low, high),
    bore,
  };
}

/** Of the surface itself, where one of the faces is round. */
function exactRadius(solid: Solid, faces: readonly number[], seen: number): number {
  const radii = faces.flatMap((face) => {
    const surface = solid.surfaces[solid.faces[face]!.surface]!;
    return surface.kind === 'cylinder' && Math.abs(surface.radius - seen) < 0.05 ? [surface.radius] : [];
  });
  return radii.length === 0 ? seen : Math.max(...radii);
}

/** Where a station stands along the spindle, in the machine's count. */
export const alongSpindle = (frame: MachineFrame, value: number, axis: 'x' | 'y' | 'z'): number => {
  const i = axis === 'x' ? 0 : axis === 'y' ? 1 : 2;
  return (value - frame.origin[i]) * frame.z[i];
};
