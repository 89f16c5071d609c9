import type { Vector2 } from '../../geometry/vector.js';
import { sectionFaces } from '../../view/section-faces.js';
import { chainOf } from '../say/extremes.js';
import { cameraOf } from '../views/orientation.js';
import type { ViewPlan } from '../views/plan.js';

/** Between hatch lines, mm, by the size of the cut area (house values in the range that drawing rule S4 gives). */
const pitchFor = (area: number): number => Math.min(5, Math.max(1.5, Math.round(0.15 * Math.sqrt(area) * 2) / 2));

/**
 * Hatch lines at 45 degrees over the cut faces of a section, paper mm. All areas of the part have one angle, one pitch and
 * one phase (drawing rule S3).
 */
export function hatchLines(plan: ViewPlan, scale: number): readonly (readonly [Vector2, Vector2])[] {
  if (plan.section === undefined) return [];
  const faces = sectionFaces(plan.solid, (face) => face.tag.cut === 'section' && face.tag.face === 'A', cameraOf(plan));
  const loops = faces.flatMap((face) => [face.outer, ...face.holes]).map((loop) =>
    loop.flatMap((curve) => fine(curve)).map(([x, y]): Vector2 => [x * scale, y * scale]),
  );
  const edges = loops.flatMap((loop) => loop.map((point, i) => [point, loop[(i + 1) % loop.length]!] as const));
  if (edges.length === 0) return [];
  let twice = 0;
  for (const [a, b] of edges) twice += a[0] * b[1] - a[1] * b[0];
  const pitch = pitchFor(Math.abs(twice) / 2);
  return scan(edges, pitch);
}

/** Points along a curve, fine enough that a hatch line ends within 0.05 mm of the outline at any usual scale. */
function fine(curve: Parameters<typeof chainOf>[0]): readonly Vector2[] {
  if (curve.kind === 'line') return [curve.from, curve.to];
  return chainOf(curve);
}

/** Lines x - y = k pitch root 2, cut to the inside of the loops (even-odd). */
function scan(edges: readonly (readonly [Vector2, Vector2])[], pitch: number): readonly (readonly [Vector2, Vector2])[] {
  const step = pitch * Math.SQRT2;
  const offset = (p: Vector2): number => p[0] - p[1];
  const offsets = edges.flatMap(([a, b]) => [offset(a), offset(b)]);
  const lines: (readonly [Vector2, Vector2])[] = [];
  // A phase that no whole size hits keeps lines off corners.
  const phase = 0.377 * step;
  for (let k = Math.ceil((Math.min(...offsets) - phase) / step); k * step + phase <= Math.max(...offsets); k += 1) {
    const c = k * step + phase;
    const hits: number[] = [];
    for (const [a, b] of edges) {
      const [da, db] = [offset(a) - c, offset(b) - c];
      if (da > 0 === db > 0) continue;
      const t = da / (da - db);
      hits.push(a[1] + (b[1] - a[1]) * t);
    }
    hits.sort((p, q) => p - q);
    for (let i = 0; i + 1 < hits.length; i += 2) {
      const [low, high] = [hits[i]!, hits[i + 1]!];
      if (high - low < 0.2) continue;
      lines.push([[low + c, low], [high + c, high]]);
    }
  }
  return lines;
}
