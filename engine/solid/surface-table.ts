import { add, cross, dot, length, scale, subtract, type Vector3 } from '../geometry/vector.js';
import type { FaceTag, SolidFace, Surface } from './model.js';

/** Surfaces nearer than this are one, mm; directions may differ by as much on a lever of the table's size. */
const SAME = 1e-6;

/** Width of the bins in which like surfaces are looked for. */
const BIN = 1e-3;

/** Numbers without a pattern, so that different surfaces seldom share a bin. */
const WEIGHTS = [0.5403023058681398, 0.8414709848078965, 0.1411200080598672, 0.9092974268256817] as const;

/** Collects faces and their surfaces; coincident surfaces share one entry, however the forms describe them. */
export class SurfaceTable {
  readonly surfaces: Surface[] = [];
  readonly faces: SolidFace[] = [];
  /** Greatest distance between a facet of each face and its surface, mm. */
  readonly sags: number[] = [];
  readonly #bins = new Map<string, number[]>();
  readonly #faces = new Map<string, number>();

  /** `size`: the greatest extent of the body, mm. */
  constructor(readonly size: number) {}

  /** Index of the face; the same tag on the same surface is one face. `sag`: its facets' distance from the surface, mm. */
  face(tag: FaceTag, surface: Surface, sag: number): number {
    const index = this.surface(surface);
    const key = JSON.stringify([tag.cut, tag.face, index]);
    const known = this.#faces.get(key);
    if (known !== undefined) {
      this.sags[known] = Math.max(sag, this.sags[known] ?? 0);
      return known;
    }
    this.sags.push(sag);
    this.faces.push({ tag, surface: index });
    this.#faces.set(key, this.faces.length - 1);
    return this.faces.length - 1;
  }

  /** Index of the surface, or of the one already known that coincides with it. */
  surface(surface: Surface): number {
    const known = this.find(surface, SAME, this.size);
    if (known !== undefined) return known;
    const index = this.surfaces.push(withoutMinusZero(surface)) - 1;
    const key = binKey(surface, 0);
    const bin = this.#bins.get(key);
    if (bin === undefined) this.#bins.set(key, [index]);
    else bin.push(index);
    return index;
  }

  /** Index of a known surface that coincides with the given one within `within` mm over a body of the given size. */
  find(surface: Surface, within: number, size: number): number | undefined {
    for (const step of [0, -1, 1]) {
      for (const index of this.#bins.get(binKey(surface, step)) ?? []) {
        const known = this.surfaces[index];
        if (known !== undefined && coincident(known, surface, size, within)) return index;
      }
    }
    return undefined;
  }
}

const binKey = (surface: Surface, step: number): string => `${surface.kind} ${Math.floor(hash(surface) / BIN) + step}`;

/** Minus zero compares as zero but does not print or test as it. */
function withoutMinusZero(surface: Surface): Surface {
  const plain = (value: unknown): unknown =>
    Array.isArray(value) ? value.map(plain) : typeof value === 'number' ? value + 0 : value;
  return Object.fromEntries(Object.entries(surface).map(([key, value]) => [key, plain(value)])) as unknown as Surface;
}

const weigh = (v: Vector3): number => v[0] * WEIGHTS[0] + v[1] * WEIGHTS[1] + v[2] * WEIGHTS[2];

/** A number that is (nearly) equal for coincident surfaces. */
function hash(surface: Surface): number {
  switch (surface.kind) {
    case 'plane':
      return dot(surface.point, surface.normal) * WEIGHTS[3] + weigh(surface.normal);
    case 'cylinder':
      return weigh(foot(surface.origin, surface.axis)) + surface.radius * WEIGHTS[3];
    case 'cone':
      return weigh(surface.apex) + surface.halfAngle * WEIGHTS[3];
    case 'torus':
      return weigh(surface.centre) + surface.minor * WEIGHTS[3];
    case 'sphere':
      return weigh(surface.centre) + surface.radius * WEIGHTS[3];
  }
}

/** The point of an axis nearest to the origin of space. */
const foot = (origin: Vector3, axis: Vector3): Vector3 => add(origin, scale(axis, -dot(origin, axis)));

/** True when two surfaces are the same within `within` mm over a body of the given size. Planes must face the same way. */
export function coincident(a: Surface, b: Surface, size: number, within: number): boolean {
  const near = (x: number, y: number): boolean => Math.abs(x - y) <= within;
  const same = (p: Vector3, q: Vector3): boolean => length(subtract(p, q)) <= within;
  const turned = within / Math.max(1, size);
  const along = (p: Vector3, q: Vector3): boolean => length(cross(p, q)) <= turned;
  if (a.kind === 'plane' && b.kind === 'plane') {
    return (
      along(a.normal, b.normal) &&
      dot(a.normal, b.normal) > 0 &&
      near(dot(a.point, a.normal), dot(b.point, a.normal))
    );
  }
  if (a.kind === 'cylinder' && b.kind === 'cylinder') {
    const across = length(cross(subtract(b.origin, a.origin), a.axis));
    return near(a.radius, b.radius) && along(a.axis, b.axis) && across <= within;
  }
  if (a.kind === 'cone' && b.kind === 'cone') {
    const angle = (Math.abs(a.halfAngle - b.halfAngle) * Math.PI) / 180;
    return same(a.apex, b.apex) && along(a.axis, b.axis) && dot(a.axis, b.axis) > 0 && angle <= turned;
  }
  if (a.kind === 'torus' && b.kind === 'torus') {
    return same(a.centre, b.centre) && along(a.axis, b.axis) && near(a.major, b.major) && near(a.minor, b.minor);
  }
  if (a.kind === 'sphere' && b.kind === 'sphere') return same(a.centre, b.centre) && near(a.radius, b.radius);
  return false;
}
