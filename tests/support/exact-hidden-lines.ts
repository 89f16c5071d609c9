import { dot, scale, type Vector2, type Vector3 } from '../../engine/geometry/vector.js';
import { rightOf } from '../../engine/view/camera.js';
import type { Camera } from '../../engine/view/model.js';
import type { Polyline } from './line-agreement.js';
import type { OpenCascade, Shape } from './open-cascade.js';

/** The curves that the exact kernel finds visible and hidden, as polylines in the plane of the view; smooth edges apart. */
export interface ExactLines {
  readonly visible: readonly Polyline[];
  readonly hidden: readonly Polyline[];
  readonly smooth: readonly Polyline[];
}

/** Runs the kernel's hidden-line pass; the result holds its edges. */
export function reflectLines(oc: OpenCascade, shape: Shape, camera: Camera): Shape {
  const reflect = new oc.HLRAppli_ReflectLines(shape);
  const [nx, ny, nz] = scale(camera.toward, -1);
  const [rx, ry, rz] = rightOf(camera);
  reflect.SetAxes(nx, ny, nz, 0, 0, 0, rx, ry, rz);
  reflect.Perform();
  return reflect;
}

/** The kernel's hidden-line result, with a point at least every `step` mm. */
export function exactLines(oc: OpenCascade, shape: Shape, camera: Camera, step: number): ExactLines {
  const reflect = reflectLines(oc, shape, camera);
  const type = oc.HLRBRep_TypeOfResultingEdge;
  const sampled = (kinds: readonly unknown[], visible: boolean): Polyline[] =>
    kinds.flatMap((kind) => samples(oc, reflect.GetCompoundOf3dEdges(kind, visible, true), camera, step));
  const sharp = [type.HLRBRep_Sharp, type.HLRBRep_OutLine];
  const rounded = [type.HLRBRep_Rg1Line, type.HLRBRep_RgNLine];
  return {
    visible: sampled(sharp, true),
    hidden: sampled(sharp, false),
    smooth: [...sampled(rounded, true), ...sampled(rounded, false)],
  };
}

function samples(oc: OpenCascade, compound: Shape, camera: Camera, step: number): Polyline[] {
  if (compound.IsNull()) return [];
  oc.BRepLib.prototype.constructor.BuildCurves3d_2(compound);
  const right = rightOf(camera);
  const result: Polyline[] = [];
  const explorer = new oc.TopExp_Explorer_2(compound, oc.TopAbs_ShapeEnum.TopAbs_EDGE, oc.TopAbs_ShapeEnum.TopAbs_SHAPE);
  for (; explorer.More(); explorer.Next()) {
    const adaptor = new oc.BRepAdaptor_Curve_2(oc.TopoDS.prototype.constructor.Edge_1(explorer.Current()));
    const [low, high] = [adaptor.FirstParameter(), adaptor.LastParameter()];
    const at = (t: number): Vector3 => {
      const p = adaptor.Value(t);
      return [p.X(), p.Y(), p.Z()];
    };
    let rough = 0;
    let last = at(low);
    for (let i = 1; i <= 16; i += 1) {
      const next = at(low + ((high - low) * i) / 16);
      rough += Math.hypot(next[0] - last[0], next[1] - last[1], next[2] - last[2]);
      last = next;
    }
    const count = Math.max(1, Math.ceil(rough / step));
    result.push(Array.from({ length: count + 1 }, (_, i): Vector2 => {
      const p = at(low + ((high - low) * i) / count);
      return [dot(p, right), dot(p, camera.up)];
    }));
    adaptor.delete();
  }
  return result;
}
