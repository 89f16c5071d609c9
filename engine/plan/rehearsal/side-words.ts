import type { Direction } from '../../part/station.js';
import type { Side } from './blank-sides.js';

/** The way out of the blank on a side. */
export const sideOf = ({ axis, end }: Side): Direction => `${end === 'low' ? '-' : '+'}${axis}`;

/** A direction square to a side, for the table of the mill. */
export const oppositeOf = ({ axis }: Side): Direction => (axis === 'x' ? '+y' : '+x');
