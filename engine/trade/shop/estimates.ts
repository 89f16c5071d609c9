import * as z from 'zod';
import { UserError } from '../../units/user-error.js';
import { findMaterial } from '../materials.js';

/** The parts of a shop file with which plans estimate: chances, times, prices. */

export const chanceOfOne = z.number().superRefine((value, context) => {
  if (!(value >= 0 && value <= 1)) context.addIssue({ code: 'custom', message: `${value} is no chance: give a number from 0 to 1, as in 0.05.` });
});

/** Minutes of operations, by the name of the part and the number of the operation. */
export const timesOfParts = z.record(
  z.string(),
  z.record(z.string(), z.unknown()).transform((times, context): Readonly<Record<string, number>> => {
    for (const [number, minutes] of Object.entries(times)) {
      if (!/^[1-9]\d{0,3}$/.test(number)) context.addIssue({ code: 'custom', message: `"${number}" is no number of an operation: give one from 1 to 9999.` });
      else if (!(typeof minutes === 'number' && minutes > 0 && Number.isFinite(minutes))) context.addIssue({ code: 'custom', message: `operation ${number} takes "${String(minutes)}": give its minutes, a number above nought.` });
    }
    return times as Readonly<Record<string, number>>;
  }),
);

/** What an hour is worth, and a kilogram of a material, in one currency. */
export const priceList = z.strictObject({
  hour: z.number().positive(),
  materials: z.record(z.string(), z.number().positive()).transform((prices, context): Readonly<Record<string, number>> => {
    const read = Object.entries(prices).map(([name, price]): readonly [string, number] => {
      try {
        return [findMaterial(name).name, price];
      } catch (fault) {
        if (!(fault instanceof UserError)) throw fault;
        context.addIssue({ code: 'custom', message: fault.message });
        return [name, price];
      }
    });
    return Object.fromEntries(read);
  }),
});
