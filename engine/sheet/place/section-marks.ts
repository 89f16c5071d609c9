import { axisOf, senseOf } from '../../part/author/directions.js';
import type { Vector2 } from '../../geometry/vector.js';
import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import type { ViewPlan } from '../views/plan.js';
import type { Placing } from './board.js';
import { arrowhead, lettering, stroke, textBox } from './pieces.js';

/** Cutting-plane ends: how far off the outline they begin and end, and how long their arrows are; paper mm (house values). */
const near = 1.5;
const far = 8;
const shaft = 8;
const letter = 5;

/** Where the letter may stand beside the plane, along the way one looks, mm. */
const letterPlaces = [0, 5.5, 8.5, -5.5, -8.5, 11.5];

/**
 * The marks of a section in the view that shows its plane edge-on: the plane's two ends drawn wide outside the outline, an
 * arrow at each the way one looks, and the letter (ISO 128-3, drawing rule V8). `busy` are the coordinates, paper mm, where
 * extension lines will run out past the letter.
 */
export function sectionMarks(group: string, view: ViewPlan, section: ViewPlan, name: string, outline: PaperBox, scale: number, busy: readonly number[]): Placing & { readonly items: readonly Item[] } {
  const plane = section.section!;
  const upright = axisOf(view.right) === plane.axis;
  const measured = upright ? view.right : view.up;
  const at = plane.value * senseOf(measured) * scale;
  // One looks from the eye to the plane.
  const look = -(senseOf(plane.eye) * senseOf(measured));
  const items: Item[] = [];
  const ink: Placing['ink'][number][] = [];
  const boxes: PaperBox[] = [];
  const ends: readonly (readonly [number, 1 | -1])[] = upright
    ? [[outline.top, 1], [outline.bottom, -1]]
    : [[outline.right, 1], [outline.left, -1]];
  const point = (along: number, across: number): Vector2 => (upright ? [across, along] : [along, across]);
  for (const [edge, sign] of ends) {
    const [a, b] = [point(edge + sign * near, at), point(edge + sign * far, at)];
    items.push(stroke(group, 'visible', a, b, `section ${name}`));
    ink.push({ kind: 'plane', a, b });
    const foot = edge + sign * (far - 1);
    const [tail, tip] = [point(foot, at), point(foot, at + look * shaft)];
    items.push(stroke(group, 'leader', tail, tip, `section ${name}`));
    items.push(arrowhead(group, 'leader', tip, upright ? (look > 0 ? 0 : 180) : look > 0 ? 90 : -90, `section ${name}`));
    ink.push({ kind: 'plane', a: tail, b: tip });
    const room = letter * 0.75 + 1;
    const beside = letterPlaces.find((place) => busy.every((each) => Math.abs(at + look * place - each) > room)) ?? letterPlaces[1]!;
    const head = point(edge + sign * (far + 1), at + look * beside);
    const text = lettering(group, 'label', upright ? [head[0], sign > 0 ? head[1] : head[1] - letter] : [head[0], head[1] - letter / 2], name, {
      height: letter,
      anchor: upright ? 'middle' : sign > 0 ? 'left' : 'right',
      style: 'bold',
      about: `section ${name}`,
    });
    items.push(text);
    boxes.push(textBox(text));
  }
  return { items, ink, boxes };
}
