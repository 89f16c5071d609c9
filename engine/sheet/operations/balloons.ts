import { add, add2, cross, distance2, dot, dot2, scale, scale2, subtract2, unit, type Vector2 } from '../../geometry/vector.js';
import type { Operation, Part } from '../../part/part.js';
import type { Solid } from '../../solid/model.js';
import { projectPoint } from '../../view/camera.js';
import type { Camera, View } from '../../view/model.js';
import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import { house } from '../place/house.js';
import { arrowhead, lettering, stroke } from '../place/pieces.js';
import { segmentsCross } from '../place/plane.js';
import { pointOn, sizeOf } from './picture.js';
import { zeroMark } from './zero-mark.js';

/** Diameter of a balloon, mm: 2.5 to 3 letter heights (house rule P2), room for three figures. */
export const balloonDiameter = 10;

/** The cuts whose faces show an operation: its own, or for a thread the holes that it is cut in. */
export function cutsShowing(part: Part, operation: Operation): ReadonlySet<string> {
  const ids = new Set(operation.cuts.filter((cut) => cut.forms.length > 0).map((cut) => cut.id));
  const keys = operation.cuts.flatMap((cut) =>
    cut.sizes.flatMap((size) => (size.kind === 'tapping' ? size.points.map((point) => point.join(' ')) : [])),
  );
  for (const other of part.operations)
    for (const cut of other.cuts)
      for (const size of cut.sizes) {
        if ((size.kind === 'hole' || size.kind === 'counterbore') && size.points.some((point) => keys.includes(point.join(' ')))) ids.add(cut.id);
      }
  return ids;
}

/** The cylinders on which an operation cuts a thread. */
export function threadedSurfaces(operation: Operation, solid: Solid): readonly number[] {
  const majors = operation.cuts.flatMap((cut) => cut.sizes.flatMap((size) => (size.kind === 'external-thread' ? [size.thread.major] : size.kind === 'internal-thread' ? [size.core] : [])));
  return solid.surfaces.flatMap((surface, i) =>
    surface.kind === 'cylinder' && majors.some((major) => Math.abs(surface.radius * 2 - major) < 1e-6) ? [i] : [],
  );
}

/** The point of a picture at which an operation's balloon aims, model mm on the picture; undefined where nothing is seen of it. */
export function operationPoint(part: Part, operation: Operation, solid: Solid, view: View, used: readonly Vector2[]): Vector2 | undefined {
  const cuts = cutsShowing(part, operation);
  const surfaces = new Set([
    ...solid.faces.filter(({ tag }) => cuts.has(tag.cut)).map(({ surface }) => surface),
    ...threadedSurfaces(operation, solid),
  ]);
  const curves = view.curves.filter((curve) => curve.visible && (surfaces.size === 0 || curve.surfaces.some((surface) => surfaces.has(surface))));
  const spots = [...curves]
    .sort((a, b) => sizeOf(b) - sizeOf(a))
    .slice(0, 8)
    .flatMap((curve) => [0.5, 0.3, 0.7].map((share) => pointOn(curve, share)));
  const room = (spot: Vector2): number => Math.min(Infinity, ...used.map((other) => Math.hypot(spot[0] - other[0], spot[1] - other[1])));
  // Where another operation made the same small feature, the arrow goes as far from that one's as it can.
  return spots.find((spot) => room(spot) > 1.2) ?? [...spots].sort((a, b) => room(b) - room(a))[0];
}

/** Where a hole that is out of sight deep in the work is pointed at: in its mouth; undefined where that is on the far side too. */
export function mouthPoint(operation: Operation, camera: Camera): Vector2 | undefined {
  const sizes = operation.cuts.flatMap((cut) => cut.sizes.flatMap((size) => (size.kind === 'hole' ? [size] : [])));
  const found = sizes.find(({ direction }) => dot(direction, camera.toward) > 1e-9);
  if (found === undefined) return undefined;
  const across = unit(cross(found.direction, camera.up));
  return projectPoint(camera, add(found.points[0]!, scale(across, found.diameter.value / 2)));
}

/** What a balloon is for: an operation by its number, or the zero of the set-up. */
export interface Site {
  readonly number: number | 'zero';
  readonly at: Vector2;
}

const rank = ({ number }: Site): number => (number === 'zero' ? -1 : number);

/** Balloons in two columns beside a picture, in order of height, with leaders that do not cross. `what` names what they number. */
export function placeBalloons(
  group: string,
  sites: readonly Site[],
  picture: PaperBox,
  what = 'operation',
): { readonly items: readonly Item[]; readonly box: PaperBox } {
  const pitch = balloonDiameter + 2;
  const middle = (picture.left + picture.right) / 2;
  const sorted = [...sites].sort((a, b) => a.at[0] - b.at[0] || rank(a) - rank(b));
  const half = Math.ceil(sorted.length / 2);
  let split = sorted.findIndex((site) => site.at[0] > middle);
  if (split < 0) split = sorted.length;
  split = Math.min(Math.max(split, sorted.length - half - 1), half + 1);
  const items: Item[] = [];
  let box = picture;
  for (const [column, side] of [[sorted.slice(0, split), -1], [sorted.slice(split), 1]] as const) {
    if (column.length === 0) continue;
    const heightsOf = heights(column.map((site) => site.at[1]), pitch, picture);
    const { x, places, order } = standOff((out) => {
      const x = side < 0 ? picture.left - out - balloonDiameter / 2 : picture.right + out + balloonDiameter / 2;
      const places = heightsOf.map((y): Vector2 => [x, y]);
      return { x, places, order: uncrossed([...column].sort((a, b) => b.at[1] - a.at[1] || rank(a) - rank(b)), places) };
    });
    order.forEach((site, i) => items.push(...(site.number === 'zero' ? zeroMark(group, places[i]!, site.at) : balloon(group, site.number, places[i]!, site.at, what))));
    const ys = places.map((place) => place[1]);
    box = {
      left: Math.min(box.left, x - balloonDiameter / 2),
      right: Math.max(box.right, x + balloonDiameter / 2),
      bottom: Math.min(box.bottom, Math.min(...ys) - balloonDiameter / 2),
      top: Math.max(box.top, Math.max(...ys) + balloonDiameter / 2),
    };
  }
  return { items, box };
}

interface Column<T> {
  readonly x: number;
  readonly places: readonly Vector2[];
  readonly order: readonly T[];
}

/** A column of balloons so far from the picture that no leader runs into another one's circle: further off they lie flatter. */
function standOff<T extends { readonly at: Vector2 }>(columnAt: (out: number) => Column<T>): Column<T> {
  const reach = balloonDiameter / 2 + 0.5;
  const isClear = ({ places, order }: Column<T>): boolean =>
    order.every((site, i) => places.every((place, k) => i === k || fromSegment(place, site.at, places[i]!) > reach));
  const columns = [6, 10, 14, 18, 22, 26].map(columnAt);
  return columns.find(isClear) ?? columns[0]!;
}

/** How far a point is from a straight piece. */
function fromSegment(point: Vector2, a: Vector2, b: Vector2): number {
  const [along, off] = [subtract2(b, a), subtract2(point, a)];
  const t = Math.max(0, Math.min(1, dot2(off, along) / dot2(along, along)));
  return distance2(point, add2(a, scale2(along, t)));
}

/** Heights for balloons, top first: near their sites, a pitch apart at least, about the picture's own middle. */
function heights(wanted: readonly number[], pitch: number, picture: PaperBox): readonly number[] {
  const sorted = [...wanted].sort((a, b) => b - a);
  const places: number[] = [];
  for (const y of sorted) places.push(Math.min(y, (places[places.length - 1] ?? Infinity) - pitch));
  const middle = (picture.top + picture.bottom) / 2;
  const own = (places[0]! + places[places.length - 1]!) / 2;
  const room = Math.max(0, (picture.top - picture.bottom - (places[0]! - places[places.length - 1]!)) / 2);
  const shift = Math.max(-room, Math.min(room, own - middle)) - (own - middle);
  return places.map((y) => y + shift);
}

/** Swaps any two whose leaders cross; each swap shortens the whole, so this ends. */
function uncrossed<T extends { readonly at: Vector2 }>(sites: readonly T[], places: readonly Vector2[]): readonly T[] {
  const order = [...sites];
  for (let turns = 0; turns < order.length * order.length; turns += 1) {
    let swapped = false;
    for (let i = 0; i < order.length; i += 1)
      for (let j = i + 1; j < order.length; j += 1)
        if (segmentsCross(order[i]!.at, places[i]!, order[j]!.at, places[j]!)) {
          [order[i], order[j]] = [order[j]!, order[i]!];
          swapped = true;
        }
    if (!swapped) break;
  }
  return order;
}

/** A numbered circle with a leader to an edge. */
export function balloon(group: string, number: number, centre: Vector2, at: Vector2, what = 'operation'): readonly Item[] {
  const about = `${what} ${number}`;
  const [dx, dy] = [at[0] - centre[0], at[1] - centre[1]];
  const reach = Math.hypot(dx, dy);
  const edge: Vector2 = [centre[0] + (dx / reach) * (balloonDiameter / 2), centre[1] + (dy / reach) * (balloonDiameter / 2)];
  const angle = (Math.atan2(dy, dx) * 180) / Math.PI;
  return [
    { kind: 'stroke', group, role: 'leader', about, curve: { kind: 'arc', centre, radius: balloonDiameter / 2, start: 0, sweep: 360 } },
    stroke(group, 'leader', edge, at, about),
    arrowhead(group, 'leader', at, angle, about),
    lettering(group, 'balloon', [centre[0], centre[1] - house.height / 2], String(number), { anchor: 'middle', about }),
  ];
}
