import type { Vector2 } from '../../geometry/vector.js';
import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import type { Ink } from './board.js';
import { house } from './house.js';
import { lettering, stroke, textWidth } from './pieces.js';

/**
 * The texture sign with material removal, standing on the end of a leader's shoulder: legs at 60 degrees, the short one 1.4
 * letter heights high, the long one 3 (ISO 1302, from memory), the value under a line from the long leg's top.
 */
export function textureSign(
  group: string,
  about: string,
  text: string,
  at: Vector2,
  side: 1 | -1,
): { readonly items: readonly Item[]; readonly ink: readonly Ink[]; readonly boxes: readonly PaperBox[]; readonly box: PaperBox } {
  const h = house.height;
  const slope = Math.tan(Math.PI / 3);
  const short = 1.4 * h;
  const long = 3 * h;
  const width = textWidth(text);
  const whole = short / slope + long / slope + width + 1;
  const foot: Vector2 = side > 0 ? [at[0] + short / slope + 0.5, at[1]] : [at[0] - whole + short / slope - 0.5, at[1]];
  const left: Vector2 = [foot[0] - short / slope, foot[1] + short];
  const right: Vector2 = [foot[0] + short / slope, foot[1] + short];
  const top: Vector2 = [foot[0] + long / slope, foot[1] + long];
  const end: Vector2 = [top[0] + width + 1, top[1]];
  const shelf: Vector2 = side > 0 ? [foot[0] + short / slope, at[1]] : [foot[0] - short / slope, at[1]];
  const box: PaperBox = {
    left: Math.min(left[0], at[0]) - 0.5,
    right: Math.max(end[0], at[0]) + 0.5,
    bottom: at[1] - 0.8,
    top: top[1] + 0.5,
  };
  return {
    items: [
      stroke(group, 'leader', at, shelf, about),
      stroke(group, 'symbol', left, foot, about),
      stroke(group, 'symbol', foot, top, about),
      stroke(group, 'symbol', left, right, about),
      stroke(group, 'symbol', top, end, about),
      lettering(group, 'dimension', [top[0] + 0.5 - 0.2, top[1] - h - 1], text, { about }),
    ],
    ink: [],
    boxes: [box],
    box,
  };
}
