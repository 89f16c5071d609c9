import type { Part } from '../../../part/part.js';
import type { Material } from '../../../trade/material.js';
import type { Shop } from '../../../trade/shop/shop.js';
import { handlingMinutes, sawing } from '../../data/handling.js';
import { densityUnknown, hoursOfKilogram } from '../../data/material-hours.js';

/** Area of the section of a bar, mm2. */
export function sectionArea({ shape, section }: Part['stock']): number {
  const [first = 0, second = first] = section;
  if (shape === 'round') return (Math.PI / 4) * first ** 2;
  if (shape === 'hexagon') return (Math.sqrt(3) / 2) * first ** 2;
  return first * second;
}

/** Minutes to find, mark and saw the blank. */
export const blankMinutes = ({ stock }: Pick<Part, 'stock'>): number => handlingMinutes.blank + sectionArea(stock) / sawing;

/** The bar of the blank: its mass, kg, and the hours that it stands for, with where those come from. */
export function blankMaterial({ stock }: Pick<Part, 'stock'>, material: Material | undefined, shop: Shop): { readonly kilograms: number; readonly hours: number; readonly source: string } {
  const kilograms = (sectionArea(stock) * stock.length * (material?.density ?? densityUnknown)) / 1e9;
  const price = material === undefined ? undefined : shop.prices?.materials[material.name];
  if (price !== undefined) return { kilograms, hours: (kilograms * price) / shop.prices!.hour, source: 'shop file' };
  return { kilograms, hours: kilograms * hoursOfKilogram[material?.kind ?? 'steel'], source: 'common practice' };
}
