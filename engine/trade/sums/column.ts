import { stressUnits } from '../../units/quantity.js';
import { UserError } from '../../units/user-error.js';
import { findMaterial } from '../materials.js';
import { readSection, sectionArguments, type Strength } from './section.js';
import { figures, say, type Sum } from './sum.js';
import type { SumValues } from './values.js';

/** Factors of length by how the ends are held: as recommended for design (AISC), somewhat above theory. */
const endFactors: Readonly<Record<string, number>> = { pinned: 1, 'fixed-pinned': 0.8, fixed: 0.65, free: 2.1 };

function readStrength(values: SumValues): Strength {
  const material = values.has('material') ? findMaterial(values.text('material')) : undefined;
  const yieldStrength = values.numberOr('yield', material?.yieldStrength);
  const modulus = values.numberOr('modulus', material === undefined ? undefined : material.modulus * 1000);
  if (yieldStrength === undefined || modulus === undefined) throw new UserError(`column needs the material, or both yield and modulus (${Object.keys(stressUnits.units).join(', ')}).`);
  return { yieldStrength, modulus, name: material?.name ?? 'as given' };
}

/**
 * Load (N) at which a straight column gives way: Euler above the slenderness sqrt(2 pi^2 E / Sy), Johnson's parabola
 * A Sy (1 - Sy (KL/r)^2 / (4 pi^2 E)) below; both give A Sy / 2 where they meet.
 */
export function columnLoad(area: number, slenderness: number, yieldStrength: number, modulus: number): { readonly load: number; readonly regime: 'Euler' | 'Johnson'; readonly limit: number } {
  const limit = Math.sqrt((2 * Math.PI ** 2 * modulus) / yieldStrength);
  if (slenderness >= limit) return { load: (Math.PI ** 2 * modulus * area) / slenderness ** 2, regime: 'Euler', limit };
  return { load: area * yieldStrength * (1 - (yieldStrength * slenderness ** 2) / (4 * Math.PI ** 2 * modulus)), regime: 'Johnson', limit };
}

export const column: Sum = {
  name: 'column',
  summary: 'load at which a rod in compression gives way sideways',
  example: { length: '150mm', diameter: '6mm', material: 'silver steel', load: '500N' },
  source: 'Euler and J. B. Johnson formulas as in textbooks of machine elements',
  arguments: [
    { name: 'length', kind: 'length', about: 'length between the ends', required: true },
    ...sectionArguments,
    { name: 'material', kind: 'material', about: 'what the rod is made of' },
    { name: 'yield', kind: 'stress', about: 'yield stress, in place of that of the material' },
    { name: 'modulus', kind: 'stress', about: "Young's modulus, in place of that of the material" },
    { name: 'ends', kind: 'choice', choices: Object.keys(endFactors), about: 'how the ends are held', default: 'pinned' },
    { name: 'factor', kind: 'number', about: 'factor of the length, in place of that of the ends' },
    { name: 'load', kind: 'force', about: 'load to check' },
  ],
  compute(values, context) {
    const section = readSection(values);
    const { yieldStrength, modulus, name } = readStrength(values);
    const factor = values.numberOr('factor', endFactors[values.text('ends')] ?? 1);
    const gyration = Math.sqrt(section.weakMoment / section.area);
    const slenderness = (factor * values.number('length')) / gyration;
    const { load, regime, limit } = columnLoad(section.area, slenderness, yieldStrength, modulus);
    const safety = values.has('load') ? load / values.number('load') : undefined;
    return {
      result: { criticalLoad: load, regime, slenderness, limitingSlenderness: limit, endFactor: factor, ...(safety === undefined ? {} : { safety }) },
      steps: [
        `area ${figures(section.area)} mm2, radius of gyration ${say(gyration, context)}, ends ${figures(factor)}: slenderness ${figures(slenderness)}`,
        `${name}: limit sqrt(2 pi^2 x ${figures(modulus)} / ${figures(yieldStrength)}) = ${figures(limit)}, so ${regime}`,
        `it gives way at ${figures(load)} N${safety === undefined ? '' : `, ${figures(safety, 3)} times the load`}`,
      ],
    };
  },
};
