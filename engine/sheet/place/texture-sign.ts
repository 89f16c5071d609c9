import type { Vector2 } from '../../geometry/vector.js';
import type { Item } from '../drawing.js';
import type { PaperBox } from '../frame-box.js';
import { house } from './house.js';
import { lettering, stroke } from './pieces.js';

/** Heights of the two legs, mm: 1.4 and 3 letter heights (ISO 1302, from memory); they stand at 60 degrees. */
const slope = Math.tan(Math.PI / 3);
const short = 1.4 * house.height;
const long = 3 * house.height;

/** Where the foot of the sign stands, at the end of a leader's shoulder that comes from the other side. */
function footAt(width: number, at: Vector2, side: 1 | -1): Vector2 {
  const whole = short / slope + long / slope + width + 1;
  return side > 0 ? [at[0] + short / slope + 0.5, at[1]] : [at[0] - whole + short / slope - 0.5, at[1]];
}

/** The box that the sign fills with a text of a given width. */
export function textureBox(width: number, at: Vector2, side: 1 | -1): PaperBox {
  const foot = footAt(width, at, side);
  return {
    left: Math.min(foot[0] - short / slope, at[0]) - 0.5,
    right: Math.max(foot[0] + long / slope + width + 1, at[0]) + 0.5,
    bottom: at[1] - 0.8,
    top: at[1] + long + 0.5,
  };
}

/** The texture sign with material removal, standing on the end of a leader's shoulder, its value under the long leg's line. */
export function textureSign(group: string, about: string, text: string, width: number, at: Vector2, side: 1 | -1): readonly Item[] {
  const foot = footAt(width, at, side);
  const left: Vector2 = [foot[0] - short / slope, foot[1] + short];
  const right: Vector2 = [foot[0] + short / slope, foot[1] + short];
  const top: Vector2 = [foot[0] + long / slope, foot[1] + long];
  const end: Vector2 = [top[0] + width + 1, top[1]];
  const shelf: Vector2 = [foot[0] + side * (short / slope), at[1]];
  return [
    stroke(group, 'leader', at, shelf, about),
    stroke(group, 'symbol', left, foot, about),
    stroke(group, 'symbol', foot, top, about),
    stroke(group, 'symbol', left, right, about),
    stroke(group, 'symbol', top, end, about),
    lettering(group, 'dimension', [top[0] + 0.3, top[1] - house.height - 1], text, { about }),
  ];
}
