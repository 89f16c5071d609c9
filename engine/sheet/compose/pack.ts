import type { Vector2 } from '../../geometry/vector.js';
import type { PaperBox } from '../frame-box.js';
import { house } from '../place/house.js';
import { boxesMeet, grown, movedBox, unionOf } from '../place/plane.js';
import { heightOf, widthOf, type Block } from './block.js';

/** A block with the move that brings it to its place on a sheet. */
export interface Placed {
  readonly block: Block;
  readonly by: Vector2;
}

/** The room on a sheet: where things may stand, and what stands there already. */
export interface SheetRoom {
  readonly area: PaperBox;
  readonly taken: readonly PaperBox[];
}

const gap = house.betweenViews;

/** Fills sheets with blocks in their order, each on the first sheet that has room; undefined when one fits no empty sheet. */
export function pack(blocks: readonly Block[], room: SheetRoom): readonly (readonly Placed[])[] | undefined {
  const sheets: Placed[][] = [];
  for (const block of blocks) {
    let done = false;
    for (const sheet of sheets) {
      const by = placeOn(block, room, sheet);
      if (by === undefined) continue;
      sheet.push({ block, by });
      done = true;
      break;
    }
    if (done) continue;
    const by = placeOn(block, room, []);
    if (by === undefined) return undefined;
    sheets.push([{ block, by }]);
  }
  return sheets.map((sheet) => balanced(sheet, room));
}

/** Least distance to the sheet's foot and marks. */
const clear = 4;

const boxOf = ({ block, by }: Placed): PaperBox => movedBox(block.box, by);
const fillsOf = ({ block, by }: Placed): readonly PaperBox[] => (block.fills ?? [block.box]).map((box) => movedBox(box, by));

/** The highest, then leftmost place where a block fits beside what stands there. */
function placeOn(block: Block, room: SheetRoom, placed: readonly Placed[]): Vector2 | undefined {
  const others = [...room.taken.map((box) => grown(box, clear - gap)), ...placed.flatMap(fillsOf)];
  const [w, h] = [widthOf(block.box), heightOf(block.box)];
  const lefts = [room.area.left, ...others.map((box) => box.right + gap)];
  const tops = [room.area.top, ...others.map((box) => box.bottom - gap)];
  let best: { left: number; top: number } | undefined;
  for (const top of tops)
    for (const left of lefts) {
      const box: PaperBox = { left, right: left + w, top, bottom: top - h };
      if (box.left < room.area.left - 1e-6 || box.right > room.area.right + 1e-6) continue;
      if (box.bottom < room.area.bottom - 1e-6 || box.top > room.area.top + 1e-6) continue;
      const fills = fillsOf({ block, by: [left - block.box.left, top - block.box.top] });
      if (others.some((other) => fills.some((fill) => boxesMeet(grown(fill, gap - 0.01), other)))) continue;
      if (best === undefined || top > best.top + 1e-6 || (Math.abs(top - best.top) <= 1e-6 && left < best.left)) best = { left, top };
    }
  return best === undefined ? undefined : [best.left - block.box.left, best.top - block.box.top];
}

/** Moves all that was placed toward the middle of what is free, as far as nothing is met. */
function balanced(sheet: readonly Placed[], room: SheetRoom): readonly Placed[] {
  const whole = unionOf(sheet.map(boxOf));
  const slack: Vector2 = [(room.area.right - whole.right) / 2, -(whole.bottom - room.area.bottom) / 2];
  for (const share of [1, 0.8, 0.6, 0.4, 0.2])
    for (const [x, y] of [[share, share], [share, 0], [0, share]] as const) {
      const by: Vector2 = [slack[0] * x, slack[1] * y];
      const moved = sheet.map((placed) => ({ ...placed, by: [placed.by[0] + by[0], placed.by[1] + by[1]] as Vector2 }));
      if (moved.every((placed) => !room.taken.some((box) => fillsOf(placed).some((fill) => boxesMeet(grown(fill, clear - 0.01), box))))) return moved;
    }
  return sheet;
}
