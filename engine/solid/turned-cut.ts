import type { Manifold, Mat4 } from 'manifold-3d/manifold';
import { length, scale, subtract } from '../geometry/vector.js';
import { bodiesOf, meshesOf, reachOf } from './bodies.js';
import { DEFAULT_SEGMENTS } from './grid.js';
import { withBodies, type Kernel } from './kernel.js';
import { apply, transpose } from './matrix.js';
import { massProperties } from './measure.js';
import { bodyOfSolid } from './mesh-body.js';
import type { Solid } from './model.js';
import { SurfaceTable } from './surface-table.js';
import type { TaggedForm } from './tagged-form.js';
import { movePoint, type Motion } from './transform.js';

const columnMajor = ({ matrix, shift }: Motion): Mat4 => [
  matrix[0][0], matrix[1][0], matrix[2][0], 0,
  matrix[0][1], matrix[1][1], matrix[2][1], 0,
  matrix[0][2], matrix[1][2], matrix[2][2], 0,
  shift[0], shift[1], shift[2], 1,
];

/**
 * For each of some motions, whether the same cuts leave another part when the work lies so: whether it is not the same moved, and
 * what is cut from it is not what is cut from it where it belongs. Less than `noise` mm3 of difference is none.
 */
export function cutsOtherwise(kernel: Kernel, work: Solid, tool: readonly TaggedForm[], motions: readonly Motion[], noise: number): readonly boolean[] {
  const reach = reachOf([work.positions]);
  const { centroid } = massProperties(work);
  return withBodies((keep) => {
    const { Manifold } = kernel.booleans;
    const differ = (a: Manifold, b: Manifold): boolean => Math.abs(a.volume() - b.volume()) > noise || keep(Manifold.difference(a, b)).volume() + keep(Manifold.difference(b, a)).volume() > noise;
    const whole = keep(bodyOfSolid(kernel, work));
    const meshes = meshesOf(kernel, tool.map(({ form }) => form), DEFAULT_SEGMENTS, reach, new Map());
    const cutter = keep(Manifold.union(bodiesOf(kernel, tool, meshes, new SurfaceTable(reach.size), true, keep)));
    const chips = keep(Manifold.intersection(whole, cutter));
    return motions.map((motion) => {
      const moved = keep(whole.transform(columnMajor(motion)));
      // Cut where it lies, and brought back: chips are compared in the work's own place.
      const back = keep(keep(Manifold.intersection(moved, cutter)).transform(columnMajor(inverse(motion))));
      if (!differ(chips, back)) return false;
      // Where the middle of the work moves, the work is not the same moved.
      return length(subtract(movePoint(motion, centroid), centroid)) > 0.01 || differ(whole, moved);
    });
  });
}

function inverse({ matrix, shift }: Motion): Motion {
  const turned = transpose(matrix);
  return { matrix: turned, shift: scale(apply(turned, shift), -1) };
}
