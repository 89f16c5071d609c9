import type { Paper } from '../../templates/paper.js';
import { inchScales, isoScales, scaleNames, type DrawingScale } from '../../templates/scales.js';
import type { Part } from '../part/part.js';
import type { Shop } from '../trade/shop/shop.js';
import { UserError } from '../units/user-error.js';
import { paperNamed } from './frame.js';
import { nearestScale } from './nearest-scale.js';
import type { Speech } from './say/texts.js';

/** How a print is to be made, as plain data. What is left undefined follows from the part. */
export interface PrintWishes {
  readonly units: 'in' | 'mm' | undefined;
  /** Each length in the other unit too, in brackets. */
  readonly secondary?: boolean;
  readonly paper: string | undefined;
  readonly scale: string | undefined;
  readonly angle: 'third' | 'first';
  /** What the user's shop has; a typical small lathe and mill unless given. */
  readonly shop?: Shop;
}

/** In which unit a print speaks. */
export const speechFor = ({ units, secondary }: PrintWishes, part: Part): Speech => ({ unit: units ?? part.units, other: secondary === true });

/** The paper asked for; undefined where none is. Throws UserError for one that does not exist. */
export const papersFor = ({ paper }: PrintWishes): readonly Paper[] | undefined => (paper === undefined ? undefined : [paperNamed(paper)]);

/** Larger than this nothing is drawn unless it is asked for: details serve what is smaller still. */
const largest = 5;
const withoutExcess = (scales: readonly DrawingScale[]): readonly DrawingScale[] => scales.filter(({ factor }) => factor <= largest);

/** The scales to try, largest first. Throws UserError for one that does not exist. */
export function scalesFor(request: PrintWishes): readonly DrawingScale[] {
  const { scale } = request;
  if (scale === undefined) return withoutExcess((request.units ?? 'in') === 'in' ? [...new Map([...inchScales, ...isoScales].map((each) => [each.name, each])).values()].sort((a, b) => b.factor - a.factor) : isoScales);
  const found = [...isoScales, ...inchScales].find(({ name }) => name === scale);
  if (found === undefined)
    throw new UserError(`there is no scale "${scale}"; the standard ones are ${scaleNames.join(', ')}; the nearest is ${nearestScale(scale)}`);
  return [found];
}

