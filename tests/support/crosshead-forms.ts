import type { Vector3 } from '../../engine/geometry/vector.js';
import type { Form, Prism } from '../../engine/part/form.js';
import type { TaggedForm } from '../../engine/solid/tagged-form.js';
import { arc, block, frameTo, halfSpace, line, polygon, rod, turned } from './forms.js';

/**
 * A milled body with the kinds of cut that a crosshead has, some sixty forms: a turned boss with bevels that blend it into
 * the body, a round-bottomed pocket, a cross bore with 90 degree countersinks at both ends, running grooves with rows of tiny
 * blind holes, chamfered edges, an oil hole askew, and a pad on one side only, which makes it handed. Mm.
 */
export function crossheadForms(handed = true): { stock: TaggedForm[]; removed: TaggedForm[] } {
  const removed: TaggedForm[] = [];
  const cut = (name: string, ...forms: Form[]): void => {
    removed.push(...forms.map((form) => ({ cut: name, form })));
  };
  cut('boss', bossWaste());
  for (const side of [-1, 1]) {
    const normal: Vector3 = [side * Math.cos(Math.PI / 12), 0, Math.sin(Math.PI / 12)];
    cut(`bevel${side}`, halfSpace([side * 15, 0, 26], normal));
  }
  cut('pocket', pocket());
  const bore = frameTo([0, 0, 12], [0, 1, 0]);
  cut('cross bore', rod(bore, 4, -20, 20));
  for (const side of [-1, 1]) {
    const mouth = frameTo([0, 10 * side, 12], [0, side, 0]);
    cut('countersinks', turned(mouth, [[0, -6], [7, 1], [0, 1]], ['cone', 'air', 'axis']));
  }
  for (const side of [-1, 1]) {
    cut(`groove${side}`, block([side > 0 ? 13 : -20, -3, -1], [side > 0 ? 20 : -13, 3, 27]));
    for (let i = 0; i < 10; i += 1) {
      for (const across of [-1.5, 1.5]) {
        cut(`pads${side}`, blindHole([13 * side, across, 2.5 + 2 * i], [-side, 0, 0], 0.4, 2));
      }
    }
  }
  for (const [x, y] of [[-1, -1], [1, -1], [1, 1], [-1, 1]] as const) {
    const normal: Vector3 = [x * Math.SQRT1_2, y * Math.SQRT1_2, 0];
    cut('edges', halfSpace([14.5 * x, 10 * y, 0], normal));
  }
  cut('oil hole', rod(frameTo([3, -10, 20], [0.3, 0.8, -0.5196152422706632]), 0.6, -3, 9));
  if (handed) {
    cut('tapped pad', blindHole([-8, -10, 4], [0, 1, 0], 1.25, 5));
    cut('side', block([5, -20, 18], [40, -9, 60]));
  }
  return { stock: [{ cut: 'stock', form: block([-15, -10, 0], [15, 10, 40]) }], removed };
}

/** All outside a boss of radius 6 above z = 30, with a fillet of radius 1 at its foot. */
const bossWaste = (): Form => ({
  kind: 'revolution',
  frame: frameTo([0, 0, 30], [0, 0, 1]),
  outline: [
    line([7, 0], [40, 0], 'shoulder'),
    line([40, 0], [40, 20], 'air'),
    line([40, 20], [6, 20], 'air'),
    line([6, 20], [6, 1], 'boss'),
    arc([6, 1], [7, 0], [7, 1], 'left', 'fillet'),
  ],
});

/** A slot along y with a round bottom, open below. */
const pocket = (): Prism => ({
  kind: 'prism',
  frame: { origin: [0, 0, 0], x: [1, 0, 0], y: [0, 0, 1], z: [0, -1, 0] },
  outline: [
    line([-5, -1], [5, -1], 'air'),
    line([5, -1], [5, 13], 'right'),
    arc([5, 13], [-5, 13], [0, 13], 'left', 'bottom'),
    line([-5, 13], [-5, -1], 'left'),
  ],
  low: -6,
  high: 6,
  lowFace: 'back',
  highFace: 'front',
});

/** A hole with a point of 118 degrees. */
export const blindHole = (entry: Vector3, direction: Vector3, radius: number, depth: number): Form =>
  turned(
    frameTo(entry, direction),
    [[0, -1], [radius, -1], [radius, depth], [0, depth + radius / Math.tan((59 * Math.PI) / 180)]],
    ['air', 'wall', 'point', 'axis'],
  );

/** A block with three holes in different directions, one askew, for quick trials. */
export const drilledBlock = (): { stock: TaggedForm[]; removed: TaggedForm[] } => ({
  stock: [{ cut: 'stock', form: block([0, 0, 0], [20, 16, 12]) }],
  removed: [
    { cut: 'a', form: rod(frameTo([6, 8, 0], [0, 0, 1]), 3, -1, 13) },
    { cut: 'b', form: rod(frameTo([0, 8, 6], [1, 0, 0]), 1.5, -1, 21) },
    { cut: 'c', form: rod(frameTo([14, 8, 6], [0.6, 0, 0.8]), 1, -20, 20) },
    { cut: 'd', form: { kind: 'prism', frame: frameTo([0, 0, 12], [0, 1, 0]), outline: polygon([[-2, -2], [2, -2], [0, 2]]), low: -1, high: 17, lowFace: 'low', highFace: 'high' } },
  ],
});
