import { findMaterial } from '../materials.js';
import { readSection, sectionArguments } from './section.js';
import { figures, say, type Sum } from './sum.js';

/** Moment = F L / m and deflection = F L^3 / (f E I) of each case (textbook beam table). */
const cases: Readonly<Record<string, readonly [moment: number, deflection: number]>> = {
  cantilever: [1, 3],
  'cantilever-spread': [2, 8],
  supported: [4, 48],
  'supported-spread': [8, 384 / 5],
  built: [8, 192],
};

export const bending: Sum = {
  name: 'bending',
  summary: 'stress and deflection of a straight pin, bar or arm in bending',
  example: { force: '100N', length: '40mm', diameter: '6mm', material: 'silver steel' },
  source: 'textbook beam table: sigma = M y / I',
  arguments: [
    { name: 'force', kind: 'force', about: 'load (the whole of it where it is spread)', required: true },
    { name: 'length', kind: 'length', about: 'span, or length that stands out', required: true },
    { name: 'case', kind: 'choice', choices: Object.keys(cases), about: 'how it is held: supported and built at both ends with the load in the middle', default: 'cantilever' },
    ...sectionArguments,
    { name: 'material', kind: 'material', about: 'what it is made of', default: 'bright mild steel' },
  ],
  compute(values, context) {
    const section = readSection(values);
    const material = findMaterial(values.text('material'));
    const [momentPart, deflectionPart] = cases[values.text('case')] ?? [1, 3];
    const [force, length] = [values.number('force'), values.number('length')];
    const moment = (force * length) / momentPart;
    const stress = (moment * section.halfDepth) / section.loadMoment;
    const deflection = (force * length ** 3) / (deflectionPart * material.modulus * 1000 * section.loadMoment);
    return {
      result: { momentNmm: moment, stressMPa: stress, deflection, safety: material.yieldStrength / stress },
      steps: [
        `moment ${figures(force)} N x ${say(length, context)} / ${momentPart} = ${figures(moment)} N mm`,
        `stress ${figures(stress)} MPa of ${material.yieldStrength}: ${figures(material.yieldStrength / stress, 3)} times`,
        `deflection ${say(deflection, context)}`,
      ],
    };
  },
};
