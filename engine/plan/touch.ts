import { toFrame } from '../geometry/frame.js';
import { dot, type Vector2, type Vector3 } from '../geometry/vector.js';
import type { Form } from '../part/form.js';
import type { Solid } from '../solid/model.js';

/**
 * How far along `direction` the metal reaches that a form takes from the work, mm: where a cutter that comes from there
 * first touches. Counted at corners between flat faces alone, which are exact; undefined where the form takes none.
 */
export function highestIn(solid: Solid, form: Form, direction: Vector3): number | undefined {
  const rounded = new Set<number>();
  const { positions, triangles, faceOfTriangle, faces, surfaces } = solid;
  for (let i = 0; i < triangles.length; i += 1) {
    const face = faces[faceOfTriangle[Math.floor(i / 3)] ?? 0];
    if (face !== undefined && surfaces[face.surface]?.kind !== 'plane') rounded.add(triangles[i] ?? 0);
  }
  let most: number | undefined;
  for (let i = 0; i < positions.length / 3; i += 1) {
    const point: Vector3 = [positions[3 * i] ?? 0, positions[3 * i + 1] ?? 0, positions[3 * i + 2] ?? 0];
    if (rounded.has(i) || !inside(form, point)) continue;
    const far = dot(point, direction);
    if (most === undefined || far > most) most = far;
  }
  return most;
}

/** How far outside a form a corner may lie and still count, mm: faces of form and work may coincide. */
const slack = 1e-4;

function inside(form: Form, point: Vector3): boolean {
  if (form.kind === 'half-space') return dot(point, form.normal) > dot(form.point, form.normal) - slack;
  if (form.kind === 'revolution') return false;
  const [u, v, height] = toFrame(form.frame, point);
  if (height < form.low - slack || height > form.high + slack) return false;
  return within(form.outline.map(({ from }) => from), [u, v]);
}

function within(corners: readonly Vector2[], [u, v]: Vector2): boolean {
  let crossings = 0;
  for (let i = 0; i < corners.length; i += 1) {
    const [a, b] = [corners[i]!, corners[(i + 1) % corners.length]!];
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const share = Math.min(1, Math.max(0, ((u - a[0]) * dx + (v - a[1]) * dy) / (dx * dx + dy * dy || 1)));
    if (Math.hypot(u - a[0] - share * dx, v - a[1] - share * dy) < slack) return true;
    if (a[1] > v !== b[1] > v && u < a[0] + ((v - a[1]) / dy) * dx) crossings += 1;
  }
  return crossings % 2 === 1;
}
