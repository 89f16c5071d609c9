import { fromFrame, frameAlong, onFrame } from '../../engine/geometry/frame.js';
import type { ArcSegment, Outline, Segment } from '../../engine/geometry/outline.js';
import { cross, scale, type Vector2, type Vector3 } from '../../engine/geometry/vector.js';
import type { Form } from '../../engine/part/form.js';
import type { TaggedForm } from '../../engine/solid/tagged-form.js';
import type { OpenCascade, Shape } from './open-cascade.js';

/**
 * The exact body of stock less removed, built from the same forms by faces, sweeps, turns and booleans of the exact
 * kernel. `reach` is the size given to half-spaces, mm; it must exceed the stock.
 */
export function formsToShape(
  oc: OpenCascade,
  stock: readonly TaggedForm[],
  removed: readonly TaggedForm[],
  reach = 400,
): Shape {
  const bodies = stock.map((item) => formShape(oc, item.form, reach));
  const body = bodies.reduce((all, next) => new oc.BRepAlgoAPI_Fuse_3(all, next).Shape());
  return removed.reduce(
    (left: Shape, item) => new oc.BRepAlgoAPI_Cut_3(left, formShape(oc, item.form, reach)).Shape(),
    body,
  );
}

/** One form as an exact body. */
export function formShape(oc: OpenCascade, form: Form, reach: number): Shape {
  switch (form.kind) {
    case 'prism': {
      const { frame, outline, low, high } = form;
      const face = planeFace(oc, outline, cross(frame.x, frame.y), (point) => onFrame(frame, point, low));
      return new oc.BRepPrimAPI_MakePrism_1(face, vector(oc, scale(frame.z, high - low)), false, true).Shape();
    }
    case 'revolution': {
      const { frame, outline } = form;
      const place = ([radius, height]: Vector2): Vector3 => fromFrame(frame, [radius, 0, height]);
      const face = planeFace(oc, outline, cross(frame.x, frame.z), place);
      const axis = new oc.gp_Ax1_2(point(oc, frame.origin), direction(oc, frame.z));
      return new oc.BRepPrimAPI_MakeRevol_2(face, axis, false).Shape();
    }
    case 'half-space': {
      const toward: Vector3 = Math.abs(form.normal[0]) < 0.6 ? [1, 0, 0] : [0, 1, 0];
      const frame = frameAlong(form.point, form.normal, toward);
      const corners: Vector2[] = [[-reach, -reach], [reach, -reach], [reach, reach], [-reach, reach]];
      const outline = corners.map((from, i): Segment => ({
        kind: 'line', from, to: corners[(i + 1) % 4] ?? from, face: form.face,
      }));
      const box = { frame, outline, low: 0, high: reach, lowFace: form.face, highFace: form.face };
      return formShape(oc, { kind: 'prism', ...box }, reach);
    }
  }
}

function planeFace(
  oc: OpenCascade,
  outline: Outline,
  normal: Vector3,
  place: (point: Vector2) => Vector3,
): Shape {
  const wire = new oc.BRepBuilderAPI_MakeWire_1();
  for (const segment of outline) {
    const from = point(oc, place(segment.from));
    const to = point(oc, place(segment.to));
    const edge =
      segment.kind === 'line'
        ? new oc.BRepBuilderAPI_MakeEdge_3(from, to)
        : new oc.BRepBuilderAPI_MakeEdge_10(circle(oc, segment, normal, place), from, to);
    wire.Add_1(edge.Edge());
  }
  return new oc.BRepBuilderAPI_MakeFace_15(wire.Wire(), true).Face();
}

function circle(
  oc: OpenCascade,
  arc: ArcSegment,
  normal: Vector3,
  place: (point: Vector2) => Vector3,
): Shape {
  const axis = arc.turn === 'left' ? normal : scale(normal, -1);
  const radius = Math.hypot(arc.from[0] - arc.centre[0], arc.from[1] - arc.centre[1]);
  const place3 = new oc.gp_Ax2_3(point(oc, place(arc.centre)), direction(oc, axis));
  return new oc.gp_Circ_2(place3, radius);
}

const point = (oc: OpenCascade, p: Vector3): Shape => new oc.gp_Pnt_3(p[0], p[1], p[2]);
const direction = (oc: OpenCascade, p: Vector3): Shape => new oc.gp_Dir_4(p[0], p[1], p[2]);
const vector = (oc: OpenCascade, p: Vector3): Shape => new oc.gp_Vec_4(p[0], p[1], p[2]);
