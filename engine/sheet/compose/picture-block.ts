import { scaleCurve } from '../../lettering/place-curve.js';
import { notes } from '../../../templates/notes.js';
import type { Camera, View } from '../../view/model.js';
import type { Item } from '../drawing.js';
import { house } from '../place/house.js';
import { lettering, textWidth } from '../place/pieces.js';
import { axesSign } from '../operations/axes-sign.js';
import type { Block } from './block.js';

/** A picture's curves at a scale, about the view's own origin. */
export const pictureItems = (group: string, view: View, factor: number): readonly Item[] =>
  view.curves
    .filter((curve) => curve.visible)
    .map((curve): Item => ({ kind: 'stroke', group, role: curve.role === 'smooth' ? 'smooth' : 'visible', curve: scaleCurve(curve.geometry, factor) }));

/** The isometric picture of the finished part, said to be a picture. */
export function pictureBlock(view: View, camera: Camera, factor: number): Block {
  const box = {
    left: view.box.low[0] * factor,
    right: view.box.high[0] * factor,
    bottom: view.box.low[1] * factor,
    top: view.box.high[1] * factor,
  };
  const text = notes['picture'];
  const width = textWidth(text, 2.5);
  const middle = (box.left + box.right) / 2;
  const label = lettering('picture', 'note', [middle, box.bottom - 4 - 2.5], text, { height: 2.5, anchor: 'middle' });
  const sign = axesSign('picture', camera, [0, 0]);
  const axes = axesSign('picture', camera, [box.left - sign.box.right - 2, box.bottom]);
  return {
    id: 'picture',
    items: [...pictureItems('picture', view, factor), ...axes.items, label],
    box: {
      left: Math.min(axes.box.left, middle - width / 2),
      right: Math.max(box.right, middle + width / 2),
      top: Math.max(box.top, axes.box.top),
      bottom: box.bottom - 4 - house.height,
    },
  };
}
