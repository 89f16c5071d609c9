import { findMaterial } from '../materials.js';
import { figures, say, type Sum } from './sum.js';

const growth = (length: number, expansion: number, rise: number): number => length * expansion * 1e-6 * rise;

export const endFloat: Sum = {
  name: 'end-float',
  summary: 'float of a chain of parts between two faces, cold and hot',
  example: { between: '60.2mm', parts: '40mm,12mm,8mm', rise: '100K', inner: 'bronze' },
  source: 'gap less the sum of the parts; hot each grows by expansion x length x rise',
  arguments: [
    { name: 'between', kind: 'length', about: 'distance of the two faces', required: true },
    { name: 'parts', kind: 'lengths', about: 'lengths of the parts between them, with commas', required: true },
    { name: 'rise', kind: 'temperature-rise', about: 'how much hotter it works', default: '0 K', sign: 'not-negative' },
    { name: 'frame', kind: 'material', about: 'material that holds the faces', default: 'bright mild steel' },
    { name: 'inner', kind: 'material', about: 'material of the parts', default: 'bright mild steel' },
  ],
  compute(values, context) {
    const parts = values.numbers('parts');
    const sum = parts.reduce((total, part) => total + part, 0);
    const cold = values.number('between') - sum;
    const [frame, inner] = [findMaterial(values.text('frame')), findMaterial(values.text('inner'))];
    const rise = values.number('rise');
    const hot = cold + growth(values.number('between'), frame.expansion, rise) - growth(sum, inner.expansion, rise);
    return {
      result: { float: cold, hotFloat: hot, sum, binds: Math.min(cold, hot) < 0 },
      steps: [
        `${say(values.number('between'), context)} - (${parts.map((part) => say(part, context)).join(' + ')}) = ${say(cold, context)}`,
        ...(rise > 0 ? [`${figures(rise)} K hotter: ${say(hot, context)}`] : []),
        ...(Math.min(cold, hot) < 0 ? ['negative: it binds'] : []),
      ],
    };
  },
};

export const expansionSum: Sum = {
  name: 'expansion',
  summary: 'growth of a length with heat',
  example: { length: '300mm', material: 'copper', rise: '150K' },
  source: 'dL = expansion x L x rise',
  arguments: [
    { name: 'length', kind: 'length', about: 'length cold', required: true },
    { name: 'material', kind: 'material', about: 'what it is made of', required: true },
    { name: 'rise', kind: 'temperature-rise', about: 'how much hotter', required: true },
  ],
  compute(values, context) {
    const material = findMaterial(values.text('material'));
    const grown = growth(values.number('length'), material.expansion, values.number('rise'));
    return { result: { growth: grown, source: material.source }, steps: [`${say(values.number('length'), context)} x ${material.expansion}e-6 x ${figures(values.number('rise'))} = ${say(grown, context)}`] };
  },
};

export const runningClearance: Sum = {
  name: 'running-clearance',
  summary: 'diametral clearance of a plain oiled bearing',
  example: { diameter: '5/8in' },
  source: 'common practice: a thou for each inch and a thou more, 0.001 d + 0.02 mm',
  arguments: [{ name: 'diameter', kind: 'length', about: 'diameter of the journal', required: true }],
  compute(values, context) {
    const clearance = 0.001 * values.number('diameter') + 0.02;
    return { result: { clearance, bore: values.number('diameter') + clearance }, steps: [`0.001 x ${say(values.number('diameter'), context)} + ${say(0.02, context)} = ${say(clearance, context)} on the diameter`] };
  },
};
