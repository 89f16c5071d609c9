import type { Frame } from '../../../geometry/frame.js';
import type { Outline } from '../../../geometry/outline.js';
import { add, cross, dot, scale, subtract, type Vector2, type Vector3 } from '../../../geometry/vector.js';
import type { Form } from '../../../part/form.js';
import type { Grip, SetUp } from '../../../part/part.js';
import { machineAxes } from '../../../plan/machine-frame.js';
import type { Solid } from '../../../solid/model.js';
import type { TaggedForm } from '../../../solid/tagged-form.js';
import { apart, block, reachAlong } from './blocks.js';

/** Chuck or collet round the stretch of the work that it grips, or the two centres; z runs from the chuck to the tailstock. */
export function chuckForms(kind: Grip['kind'], setUp: SetUp, work: Solid, spindle: Vector3, along: Vector3, ends: readonly [number, number]): readonly TaggedForm[] {
  const { right, up, near } = machineAxes(setUp);
  if (Math.abs(dot(along, right)) < 0.9) return [];
  const foot = subtract(spindle, scale(right, dot(spindle, right)));
  const held = (form: Form): TaggedForm => ({ cut: 'held by', form });
  // Height along the spindle counts from the part's own zero.
  const frame: Frame = { origin: foot, x: up, y: cross(right, up), z: right };
  const [low, high] = (dot(along, right) > 0 ? ends : [-ends[1], -ends[0]]) as readonly [number, number];
  const whole = reachAlong(work, right);
  const radiusIn = (from: number, to: number): number => Math.max(0, ...sectionPoints(work, foot, right, [from, to]).map((p) => Math.hypot(dot(p, up), dot(p, near))));
  if (kind === 'between centres') {
    const radius = Math.max(0.35 * radiusIn(...whole), 1);
    const nose = radius * Math.sqrt(3);
    const cone = (tip: number, way: 1 | -1): Form => turned(frame, way > 0 ? [[0, tip], [radius, tip + nose], [radius, tip + 2 * nose], [0, tip + 2 * nose]] : [[0, tip - 2 * nose], [radius, tip - 2 * nose], [radius, tip - nose], [0, tip]]);
    return [held(cone(whole[0] - apart, -1)), held(cone(whole[1] + apart, 1))];
  }
  const points = sectionPoints(work, foot, right, [low, high]);
  if (points.length === 0) return [];
  const radius = Math.max(...points.map((p) => Math.hypot(dot(p, up), dot(p, near))));
  const behind = whole[0] < low - 0.1 ? radiusIn(whole[0], low) + 0.05 * radius : 0;
  if (kind === 'collet') return [held(ring(frame, [radius + apart, 1.55 * radius], [low, high])), held(ring(frame, [behind, 1.9 * radius], [low - 0.6 * radius, low - apart]))];
  const angles = kind === 'four-jaw chuck' ? [0, 90, 180, 270] : [0, 120, 240];
  const deep = 0.55 * radius;
  let rim = 0;
  const jaws = angles.map((angle): Form => {
    const turn = (angle * Math.PI) / 180;
    const out = add(scale(up, Math.cos(turn)), scale(frame.y, Math.sin(turn)));
    const face = Math.max(...points.map((p) => dot(p, out))) + apart;
    rim = Math.max(rim, face + deep);
    return block({ origin: foot, x: out, y: cross(right, out), z: right }, [face, face + deep], [-0.28 * radius, 0.28 * radius], [low, high]);
  });
  const body = ring(frame, [behind, rim + 0.35 * radius], [low - 0.5 * radius, low - apart]);
  return [...jaws.map(held), held(body)];
}

const turned = (frame: Frame, corners: readonly Vector2[]): Form => ({
  kind: 'revolution',
  frame,
  outline: corners.map((from, i) => ({ kind: 'line', from, to: corners[(i + 1) % corners.length]!, face: `side ${i}` })) satisfies Outline,
});

const ring = (frame: Frame, [inner, outer]: readonly [number, number], [low, high]: readonly [number, number]): Form =>
  turned(frame, [[inner, low], [outer, low], [outer, high], [inner, high]]);

/** Points of a solid's facets, square to the axis from it, over a stretch of the axis. */
function sectionPoints({ positions, triangles }: Solid, foot: Vector3, axis: Vector3, [low, high]: readonly [number, number]): readonly Vector3[] {
  const points: Vector3[] = [];
  const at = (vertex: number): { readonly off: Vector3; readonly height: number } => {
    const point: Vector3 = [positions[3 * vertex] ?? 0, positions[3 * vertex + 1] ?? 0, positions[3 * vertex + 2] ?? 0];
    const height = dot(point, axis);
    return { off: subtract(subtract(point, foot), scale(axis, height)), height };
  };
  for (let i = 0; i < triangles.length; i += 1) {
    const a = at(triangles[i] ?? 0);
    const b = at(triangles[i - (i % 3) + ((i + 1) % 3)] ?? 0);
    if (a.height >= low && a.height <= high) points.push(a.off);
    for (const level of [low, high]) {
      if (a.height > level === b.height > level) continue;
      points.push(add(a.off, scale(subtract(b.off, a.off), (level - a.height) / (b.height - a.height))));
    }
  }
  return points;
}
