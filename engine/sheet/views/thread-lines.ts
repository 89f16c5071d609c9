import type { ExternalThreadSize, InternalThreadSize, TappingSize } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import type { AddedCurve, Camera, Curve3 } from '../../view/model.js';
import { add, cross, dot, scale, subtract, unit, type Vector3 } from '../../geometry/vector.js';
import type { SectionPlane } from './plan.js';
import { indexOf, senseOf } from '../../part/author/directions.js';
import { parallel } from './axes-of-part.js';

/** How far off a surface a thread line is tested, mm: enough to be clear of facets, less than anything made. */
export const off = 0.02;

/** Three quarters of a circle for the end view of a thread, the gap at the upper right (ISO 6410-1, quadrant from memory). */
export const openingStart = 95;
export const openingSweep = 270;

/**
 * The lines by which a drawing shows threads: root of a screw and crest of a nut as thin lines, three quarters of a circle
 * from the end, a full line where the full thread ends (ISO 6410-1).
 */
export function threadLines(part: Part, camera: Camera, section?: SectionPlane): readonly AddedCurve[] {
  const curves: AddedCurve[] = [];
  for (const operation of part.operations)
    for (const cut of operation.cuts)
      for (const size of cut.sizes) {
        if (size.kind === 'tapping') for (const point of size.points) curves.push(...tappedHole(part, size, point, camera, section));
        if (size.kind === 'internal-thread') curves.push(...nut(part, size, camera, section));
        if (size.kind === 'external-thread') curves.push(...screw(part, size, camera));
      }
  return curves;
}

function tappedHole(part: Part, size: TappingSize, point: Vector3, camera: Camera, section?: SectionPlane): readonly AddedCurve[] {
  const radius = size.thread.major / 2;
  const { direction } = size;
  const name = `thread ${size.thread.designation}`;
  if (parallel(direction, camera.toward)) {
    if (dot(direction, camera.toward) < 0 || isCutAway(point, section)) return [];
    const start = mouthDepth(part, size, point);
    const arc = endArc(add(point, scale(direction, start)), camera, radius);
    return [{ role: 'thread', name, drawn: arc, tested: shifted(arc, scale(camera.toward, -(start + off))) }];
  }
  if (Math.abs(dot(direction, camera.toward)) > 1e-9) return [];
  // Seen from the side a tapped hole shows its thread only where a section lays it open.
  if (section === undefined || Math.abs(point[indexOf(section.axis)] - section.value) > 1e-6) return [];
  const across = unit(cross(direction, camera.toward));
  const start = mouthDepth(part, size, point);
  const end = size.depth?.value ?? throughDepth(part, size, point);
  const nearer = scale(camera.toward, -off);
  const lines: AddedCurve[] = [-1, 1].map((side) => {
    const drawn: Curve3 = {
      kind: 'line',
      from: add(add(point, scale(direction, start)), scale(across, side * radius)),
      to: add(add(point, scale(direction, end)), scale(across, side * radius)),
    };
    return { role: 'thread', name, drawn, tested: shifted(drawn, nearer) };
  });
  if (size.depth === undefined) return lines;
  const foot = add(point, scale(direction, end));
  const drawn: Curve3 = { kind: 'line', from: add(foot, scale(across, -radius)), to: add(foot, scale(across, radius)) };
  return [...lines, { role: 'edge', name: `${name} end`, drawn, tested: shifted(drawn, nearer) }];
}

function screw(part: Part, size: ExternalThreadSize, camera: Camera): readonly AddedCurve[] {
  const name = `thread ${size.thread.designation}`;
  const root = size.root / 2;
  const crest = size.thread.major / 2;
  const along = unit(subtract(size.to, size.from));
  if (parallel(along, camera.toward)) {
    if (dot(along, camera.toward) < 0) return [];
    const arc = endArc(size.from, camera, root);
    return [{ role: 'thread', name, drawn: arc, tested: shifted(arc, scale(camera.toward, -off)) }];
  }
  if (Math.abs(dot(along, camera.toward)) > 1e-9) return [];
  const across = unit(cross(along, camera.toward));
  const start = add(size.from, scale(along, leadIn(part, size, crest - root)));
  const nearer = scale(camera.toward, -(crest + off));
  const lines: AddedCurve[] = [-1, 1].map((side) => {
    const drawn: Curve3 = { kind: 'line', from: add(start, scale(across, side * root)), to: add(size.to, scale(across, side * root)) };
    const axis: Curve3 = { kind: 'line', from: start, to: size.to };
    return { role: 'thread', name, drawn, tested: shifted(axis, nearer) };
  });
  const end: Curve3 = { kind: 'line', from: add(size.to, scale(across, -crest)), to: add(size.to, scale(across, crest)) };
  return [...lines, { role: 'edge', name: `${name} end`, drawn: end, tested: shifted(end, nearer) }];
}

/** The thread of a bore: its crest lines where a section lays it open, three quarters of a circle from its mouth. */
function nut(part: Part, size: InternalThreadSize, camera: Camera, section?: SectionPlane): readonly AddedCurve[] {
  const radius = size.thread.major / 2;
  const name = `thread ${size.thread.designation}`;
  const along = unit(subtract(size.to, size.from));
  if (parallel(along, camera.toward)) {
    if (dot(along, camera.toward) < 0 || isCutAway(size.from, section)) return [];
    const arc = endArc(size.from, camera, radius);
    return [{ role: 'thread', name, drawn: arc, tested: shifted(arc, scale(camera.toward, -off)) }];
  }
  if (Math.abs(dot(along, camera.toward)) > 1e-9) return [];
  if (section === undefined || Math.abs(size.from[indexOf(section.axis)] - section.value) > 1e-6) return [];
  const across = unit(cross(along, camera.toward));
  const start = add(size.from, scale(along, mouthChamfer(part, size, radius)));
  const nearer = scale(camera.toward, -off);
  return [-1, 1].map((side): AddedCurve => {
    const drawn: Curve3 = { kind: 'line', from: add(start, scale(across, side * radius)), to: add(size.to, scale(across, side * radius)) };
    return { role: 'thread', name, drawn, tested: shifted(drawn, nearer) };
  });
}

/** How deep a chamfer at the mouth keeps the crest of an internal thread in the air. */
export function mouthChamfer(part: Part, size: InternalThreadSize, radius: number): number {
  for (const operation of part.operations)
    for (const cut of operation.cuts)
      for (const other of cut.sizes)
        if (other.kind === 'chamfer' && other.internal && Math.hypot(...subtract(other.ring.point, size.from)) <= other.leg.value) {
          const mouth = other.ring.radius + (other.leg.value * Math.tan((other.angle * Math.PI) / 180)) / 2;
          return Math.max(0, (mouth - radius) / Math.tan((other.angle * Math.PI) / 180));
        }
  return 0;
}

/** True for a point on the side that a section takes away. */
export const isCutAway = (point: Vector3, section: SectionPlane | undefined): boolean =>
  section !== undefined && section.half === undefined && (point[indexOf(section.axis)] - section.value) * senseOf(section.eye) > 1e-6;

/** Three quarters of a circle as seen by a camera, opening at the upper right. */
function endArc(centre: Vector3, camera: Camera, radius: number): Curve3 {
  return { kind: 'arc', centre, x: cross(camera.toward, camera.up), y: camera.up, radius, start: openingStart, sweep: openingSweep };
}

export function shifted(curve: Curve3, by: Vector3): Curve3 {
  return curve.kind === 'line'
    ? { ...curve, from: add(curve.from, by), to: add(curve.to, by) }
    : { ...curve, centre: add(curve.centre, by) };
}

/** How deep the wider mouth of a hole (counterbore, countersink) reaches before the thread's crest has metal. */
export function mouthDepth(part: Part, size: TappingSize, point: Vector3): number {
  const radius = size.thread.major / 2;
  let depth = 0;
  for (const other of sizesAt(part, size.direction, point)) {
    if (other.diameter.value / 2 <= radius) continue;
    if (other.kind === 'counterbore') depth = Math.max(depth, other.depth.value);
    if (other.kind === 'countersink')
      depth = Math.max(depth, (other.diameter.value / 2 - radius) / Math.tan((other.angle * Math.PI) / 360));
  }
  return depth;
}

function* sizesAt(part: Part, direction: Vector3, point: Vector3) {
  for (const operation of part.operations)
    for (const cut of operation.cuts)
      for (const size of cut.sizes)
        if (size.kind === 'counterbore' || size.kind === 'countersink' || size.kind === 'hole')
          if (dot(size.direction, direction) > 1 - 1e-9 && size.points.some((each) => Math.hypot(...subtract(each, point)) < 1e-6)) yield size;
}

/** A thread right through has no depth of its own; it is drawn as far as the hole's own box of metal may reach. */
function throughDepth(part: Part, size: TappingSize, point: Vector3): number {
  for (const other of sizesAt(part, size.direction, point)) if (other.kind === 'hole' && other.depth !== undefined) return other.depth.value;
  const stations = part.stations.filter((station) => vectorAlong(size.direction, station.axis) !== 0);
  const ahead = stations.map((station) => (station.value - point[indexOf(station.axis)]) * vectorAlong(size.direction, station.axis));
  return Math.max(0, ...ahead);
}

const vectorAlong = (direction: Vector3, axis: 'x' | 'y' | 'z'): number => Math.round(direction[indexOf(axis)]);

/** How far from the end a chamfer keeps the root of a screw in the air. */
export function leadIn(part: Part, size: ExternalThreadSize, height: number): number {
  for (const operation of part.operations)
    for (const cut of operation.cuts)
      for (const other of cut.sizes)
        if (other.kind === 'chamfer' && !other.internal && Math.hypot(...subtract(other.ring.point, size.from)) <= other.leg.value)
          return Math.max(0, other.leg.value - height / Math.tan((other.angle * Math.PI) / 180));
  return 0;
}
