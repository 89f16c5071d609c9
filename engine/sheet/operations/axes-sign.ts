import type { Vector2, Vector3 } from '../../geometry/vector.js';
import { projectPoint } from '../../view/camera.js';
import type { Camera } from '../../view/model.js';
import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import { envelopeOf } from '../place/envelope.js';
import { house } from '../place/house.js';
import { arrowhead, lettering, movedItems, stroke, textBox } from '../place/pieces.js';
import { boxesMeet, segmentMeetsBox } from '../place/plane.js';

/** Length of an axis that lies in the paper, mm. */
const reach = 11;

/** Letters with the directions that they stand for. */
export type NamedAxes = readonly (readonly [string, Vector3])[];

const partAxes: NamedAxes = [
  ['X', [1, 0, 0]],
  ['Y', [0, 1, 0]],
  ['Z', [0, 0, 1]],
];

/** Axes (the part's own three unless others are given) as a picture sees them, with their letters; the lower left of all at `at`. */
export function axesSign(group: string, camera: Camera, at: Vector2, axes: NamedAxes = partAxes): { readonly items: readonly Item[]; readonly box: PaperBox } {
  const items: Item[] = [];
  const tips: { readonly name: string; readonly tip: Vector2; readonly way: Vector2 }[] = [];
  for (const [name, axis] of axes) {
    const [x, y] = projectPoint(camera, axis);
    const length = Math.hypot(x, y);
    // An axis that points straight at the eye has no length on paper.
    if (length < 0.15) continue;
    const tip: Vector2 = [x * reach, y * reach];
    items.push(stroke(group, 'leader', [0, 0], tip, 'axes'), arrowhead(group, 'leader', tip, (Math.atan2(y, x) * 180) / Math.PI, 'axes'));
    tips.push({ name, tip, way: [x / length, y / length] });
  }
  // Two axes may look alike on paper: each letter takes the first place at its tip that is clear of lines and letters.
  for (const { name, tip, way } of tips) {
    const letters = [[3.2, 0], [0, 3.2], [0, -3.2], [6.5, 0]].map(([on, aside]) => {
      const at: Vector2 = [tip[0] + way[0] * on! - way[1] * aside!, tip[1] + way[1] * on! + way[0] * aside! - house.height / 2];
      return lettering(group, 'label', at, name, { anchor: 'middle', about: 'axes' });
    });
    items.push(letters.find((letter) => items.every((item) => !meets(item, textBox(letter, 0.3)))) ?? letters[0]!);
  }
  const box = envelopeOf(items);
  const by: Vector2 = [at[0] - box.left, at[1] - box.bottom];
  return {
    items: movedItems(items, by),
    box: { left: at[0], bottom: at[1], right: box.right + by[0], top: box.top + by[1] },
  };
}

const meets = (item: Item, box: PaperBox): boolean =>
  item.kind === 'stroke' && item.curve.kind === 'line' ? segmentMeetsBox(item.curve.from, item.curve.to, box) : boxesMeet(envelopeOf([item]), box);
