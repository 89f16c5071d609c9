import type { Vector2 } from '../../geometry/vector.js';
import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import type { PrintItem, Target } from '../say/item.js';
import type { Housed } from '../views/choose-views.js';
import type { ViewPlan } from '../views/plan.js';
import { placeAngle, type AngleTask } from './angles.js';
import type { Shape } from './draw-shape.js';
import { placeFarRadius } from './far-radius.js';
import { placeLeaders } from './leaders.js';
import { house } from './house.js';
import type { Leaning } from './linear-choices.js';
import type { LinearTask } from './linear-option.js';
import { placeLinear } from './linear.js';
import { textWidth } from './pieces.js';
import type { ViewDrawing } from './view-drawing.js';

/** All that is said on a view: its items, where each text stands, and what found no place. */
export interface Said {
  readonly items: readonly Item[];
  readonly texts: ReadonlyMap<string, PaperBox>;
  readonly failed: readonly string[];
}

/** How often the order is changed before a callout without a place is given up. */
const turns = 4;

/**
 * Places all that is said: distances, then angles, then callouts. Where a callout finds no place, it goes before the
 * distances in the next turn; the turn with the fewest failures counts. Where a little still fails, all is tried again with
 * the distances on the other sides and far radii at the other end of their arcs.
 */
export function sayAll(drawing: ViewDrawing, shape: Shape): Said {
  const usual = sayInTurns(drawing, shape, 'usual');
  if (usual.failed.length === 0 || usual.failed.length > few) return usual;
  const turned = sayInTurns(drawing, shape, 'turned');
  return turned.failed.length < usual.failed.length ? turned : usual;
}

/** Where more is amiss, another order will not mend it. */
const few = 3;

function sayInTurns(drawing: ViewDrawing, shape: Shape, leaning: Leaning): Said {
  let first: ReadonlySet<string> = new Set();
  let best: Said | undefined;
  for (let turn = 0; turn < turns; turn += 1) {
    const said = sayOnce(drawing, shape, first, leaning);
    if (best === undefined || said.failed.length < best.failed.length) best = said;
    const more = said.failed.filter((id) => !first.has(id) && drawing.housed.some(({ item, home }) => item.id === id && home.kind !== 'linear'));
    if (more.length === 0 || said.failed.length > few) break;
    first = new Set([...first, ...more]);
  }
  return best!;
}

function sayOnce({ plan, scale, housed, keep: keepIt }: ViewDrawing, shape: Shape, first: ReadonlySet<string>, leaning: Leaning): Said {
  const group = plan.id;
  const board = shape.board.copy();
  const items: Item[] = [];
  const texts = new Map<string, PaperBox>();
  const failed: string[] = [];
  const keep = (placed: readonly { readonly id: string; readonly items: readonly Item[]; readonly box: PaperBox }[]): void => {
    for (const each of placed) {
      items.push(...each.items);
      texts.set(each.id, each.box);
    }
  };
  const leaders = (wanted: (id: string) => boolean, pointed: ReadonlySet<string>): void => {
    const result = placeLeaders(
      group,
      housed.flatMap(({ item, home }) => {
        const targets = home.kind === 'leader' ? home.targets : home.kind === 'linear' && pointed.has(item.id) ? home.instead! : [];
        if (targets.length === 0 || !wanted(item.id)) return [];
        return [{ id: item.id, lines: item.lines, texture: item.texture === true, targets: targets.slice(0, 10).map((target) => scaledTarget(target, scale)) }];
      }),
      shape.outline,
      plan.section !== undefined,
      keepIt,
      board,
    );
    keep(result.placed);
    failed.push(...result.failed);
  };
  const angles = (wanted: (id: string) => boolean): void => {
    for (const { item, home } of housed) {
      if (home.kind !== 'angle' || !wanted(item.id)) continue;
      const task: AngleTask = {
        id: item.id,
        text: item.lines[0]!,
        corner: [home.corner[0] * scale, home.corner[1] * scale],
        from: home.from,
        to: home.to,
        drawn: [home.from, home.to].map((leg) => drawnAlong(plan, home.corner, leg).map((each) => each * scale) as [number, number]),
      };
      const placed = placeAngle(group, task, board);
      if (placed === undefined) failed.push(item.id);
      else keep([placed]);
    }
  };
  const farRadii = (wanted: (id: string) => boolean): void => {
    for (const { item, home } of housed) {
      if (home.kind !== 'far-radius' || !wanted(item.id)) continue;
      const centre: Vector2 = [home.centre[0] * scale, home.centre[1] * scale];
      const placed = placeFarRadius(group, { id: item.id, lines: item.lines, centre, radius: home.radius * scale, from: home.from, to: home.to }, shape.outline, board, leaning);
      if (placed === undefined) failed.push(item.id);
      else keep([placed]);
    }
  };
  angles((id) => first.has(id));
  farRadii((id) => first.has(id));
  leaders((id) => first.has(id), new Set());
  const tooLong = (item: Housed['item'], home: Housed['home']): boolean =>
    home.kind === 'linear' && home.instead !== undefined && widthOf(item) + 2 > (home.high - home.low) * scale;
  const pitch = housed.some(({ item, home }) => home.kind === 'linear' && item.lines.length > 1) ? house.pitchOfTwo : house.pitch;
  const linear = placeLinear(
    group,
    housed.flatMap(({ item, home }) => (home.kind === 'linear' && !tooLong(item, home) ? [linearTask(item, home, pitch)] : [])),
    shape.outline,
    scale,
    board,
    leaning,
  );
  keep(linear.placed);
  const pointed = new Set(
    housed.filter(({ item, home }) => home.kind === 'linear' && home.instead !== undefined && (tooLong(item, home) || linear.failed.includes(item.id))).map(({ item }) => item.id),
  );
  failed.push(...linear.failed.filter((id) => !pointed.has(id)));
  angles((id) => !first.has(id));
  farRadii((id) => !first.has(id));
  leaders((id) => !first.has(id), pointed);
  return { items, texts, failed };
}

const widthOf = (item: PrintItem): number => Math.max(...item.lines.map((line) => textWidth(line)));

const linearTask = (item: PrintItem, home: LinearTask['home'], pitch: number): LinearTask => ({
  id: item.id,
  text: item.lines[0]!,
  ...(item.lines[1] === undefined ? {} : { under: item.lines[1] }),
  width: widthOf(item),
  pitch,
  home,
});

const scaledTarget = (target: Target, scale: number): Target => ({
  ...target,
  at: [target.at[0] * scale, target.at[1] * scale],
  radius: target.radius * scale,
});

/** From where to where from a corner, along a direction, the visible outline runs; 0 to 0 where it does not. Model mm. */
function drawnAlong(plan: ViewPlan, corner: Vector2, angle: number): readonly [number, number] {
  const radians = (angle * Math.PI) / 180;
  const direction: Vector2 = [Math.cos(radians), Math.sin(radians)];
  let far = 0;
  let near = Infinity;
  for (const { geometry, visible } of plan.view.curves) {
    if (!visible || geometry.kind !== 'line') continue;
    const ends = [geometry.from, geometry.to].map((point) => along(point, corner, direction));
    if (ends.some(({ off }) => off > 1e-4)) continue;
    if (ends.every(({ distance }) => distance < 1e-6)) continue;
    far = Math.max(far, ...ends.map(({ distance }) => distance));
    near = Math.max(0, Math.min(near, ...ends.map(({ distance }) => distance)));
  }
  return far === 0 ? [0, 0] : [near, far];
}

const along = (point: Vector2, corner: Vector2, direction: Vector2): { readonly distance: number; readonly off: number } => {
  const [x, y] = [point[0] - corner[0], point[1] - corner[1]];
  return { distance: x * direction[0] + y * direction[1], off: Math.abs(x * direction[1] - y * direction[0]) };
};

