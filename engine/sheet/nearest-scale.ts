import { inchScales, isoScales, type DrawingScale } from '../../templates/scales.js';
import { nearestName } from '../units/nearest-name.js';

/** The standard scale that comes nearest to what was asked for, by its size where it can be read as one, else by its name. */
export function nearestScale(asked: string): string {
  const [, paper, part = '1'] = /^\s*(\d+(?:\.\d+)?)\s*(?:[:/]\s*(\d+(?:\.\d+)?))?\s*$/.exec(asked) ?? [];
  const factor = Number(paper) / Number(part);
  const scales = [...isoScales, ...inchScales];
  if (!(factor > 0 && Number.isFinite(factor))) return nearestName(asked, scales.map(({ name }) => name)) ?? '1:1';
  const off = (scale: DrawingScale): number => Math.abs(Math.log(scale.factor / factor));
  return scales.reduce((best, scale) => (off(scale) < off(best) ? scale : best)).name;
}
