import type { Manifold } from 'manifold-3d/manifold';
import { length, scale, subtract, type Vector3 } from '../geometry/vector.js';
import { bodiesOf, meshesOf, reachOf } from './bodies.js';
import { columnMajor } from './column-major.js';
import { DEFAULT_SEGMENTS } from './grid.js';
import { withBodies, type Kernel } from './kernel.js';
import { apply, transpose } from './matrix.js';
import { massProperties } from './measure.js';
import { heldBody } from './mesh-body.js';
import type { Solid } from './model.js';
import { SurfaceTable } from './surface-table.js';
import type { TaggedForm } from './tagged-form.js';
import { movePoint, type Motion } from './transform.js';

/** Whether the same cuts leave another part when the work lies so. */
export type CutsOtherwise = (motion: Motion) => boolean;

/**
 * Lets `use` ask of motions whether the same cuts leave another part when the work lies so: whether it is not the same moved,
 * and what is cut from it is not what is cut from it where it belongs. Less than `noise` mm3 of difference is none.
 */
export function withTurnedCuts<T>(kernel: Kernel, work: Solid, tool: readonly TaggedForm[], noise: number, use: (otherwise: CutsOtherwise) => T): T {
  const reach = reachOf([work.positions]);
  const { centroid } = massProperties(work);
  return withBodies((keep) => {
    const { Manifold } = kernel.booleans;
    const moments = new Map<Manifold, Moment>();
    const momentOf = (body: Manifold): Moment => {
      const known = moments.get(body) ?? firstMoment(body, centroid);
      moments.set(body, known);
      return known;
    };
    const differ = (a: Manifold, b: Manifold): boolean => {
      if (Math.abs(a.volume() - b.volume()) > noise) return true;
      // What bodies differ by is at least what their moments do over the longest lever.
      const [first, second] = [momentOf(a), momentOf(b)];
      const apart = length(subtract(first.moment, second.moment)) / Math.max(first.lever, second.lever, 1e-9);
      if (apart > noise + rounding * (a.surfaceArea() + b.surfaceArea())) return true;
      const left = keep(Manifold.difference(a, b)).volume();
      return left > noise || left + keep(Manifold.difference(b, a)).volume() > noise;
    };
    const whole = heldBody(kernel, work);
    const meshes = meshesOf(kernel, tool.map(({ form }) => form), DEFAULT_SEGMENTS, reach, new Map());
    const cutter = keep(Manifold.union(bodiesOf(kernel, tool, meshes, new SurfaceTable(reach.size), true, keep)));
    const chips = keep(Manifold.intersection(whole, cutter));
    return use((motion) => {
      const moved = keep(whole.transform(columnMajor(motion)));
      // Cut where it lies, and brought back: chips are compared in the work's own place.
      const back = keep(keep(Manifold.intersection(moved, cutter)).transform(columnMajor(inverse(motion))));
      if (!differ(chips, back)) return false;
      // Where the middle of the work moves, the work is not the same moved.
      return length(subtract(movePoint(motion, centroid), centroid)) > 0.01 || differ(whole, moved);
    });
  });
}

/** Places are read with 32 bits: so far off on a body of 300 mm, mm. */
const rounding = 2e-5;

/** First moment about a point, mm4, and how far the body reaches from that point, mm. */
interface Moment {
  readonly moment: Vector3;
  readonly lever: number;
}

function firstMoment(body: Manifold, [ox, oy, oz]: Vector3): Moment {
  const { vertProperties: p, triVerts: t, numProp } = body.getMesh();
  let [mx, my, mz, far] = [0, 0, 0, 0];
  for (let i = 0; i < t.length; i += 3) {
    const [a, b, c] = [numProp * t[i]!, numProp * t[i + 1]!, numProp * t[i + 2]!];
    const [ax, ay, az] = [p[a]! - ox, p[a + 1]! - oy, p[a + 2]! - oz];
    const [bx, by, bz] = [p[b]! - ox, p[b + 1]! - oy, p[b + 2]! - oz];
    const [cx, cy, cz] = [p[c]! - ox, p[c + 1]! - oy, p[c + 2]! - oz];
    const volume = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    mx += volume * (ax + bx + cx);
    my += volume * (ay + by + cy);
    mz += volume * (az + bz + cz);
    far = Math.max(far, ax * ax + ay * ay + az * az, bx * bx + by * by + bz * bz, cx * cx + cy * cy + cz * cz);
  }
  return { moment: [mx / 24, my / 24, mz / 24], lever: Math.sqrt(far) };
}

function inverse({ matrix, shift }: Motion): Motion {
  const turned = transpose(matrix);
  return { matrix: turned, shift: scale(apply(turned, shift), -1) };
}
