import type { Operation } from '../../part/part.js';

/** Whether an operation parts the work from its bar, whatever else it does. */
export const isPartingOff = ({ title, caution = [] }: Operation): boolean => /\bpart(ing)?[ -]off\b/i.test(title) || caution.includes('parting-off');
