import { UserError } from '../../units/user-error.js';
import { findMaterial } from '../materials.js';
import { figures, say, type Sum } from './sum.js';

/** Area (mm2) of a section by its size: diameter, side, across flats or thickness. */
function sectionArea(section: string, size: number, width: number | undefined, bore: number | undefined): number {
  if (width !== undefined && section !== 'flat') throw new UserError(`a ${section} bar has no width: leave it out, or give the section flat.`);
  if (bore !== undefined && section !== 'tube') throw new UserError(`a ${section} bar has no bore: leave it out, or give the section tube.`);
  if (section === 'square') return size ** 2;
  if (section === 'hexagon') return (Math.sqrt(3) / 2) * size ** 2;
  if (section === 'round') return (Math.PI / 4) * size ** 2;
  if (section === 'tube') {
    if (bore === undefined || bore >= size) throw new UserError('a tube needs a bore that is under its size.');
    return (Math.PI / 4) * (size ** 2 - bore ** 2);
  }
  if (width === undefined) throw new UserError('a flat needs its width.');
  return size * width;
}

export const weight: Sum = {
  name: 'weight',
  summary: 'weight of a length of bar, or of a volume',
  example: { material: 'brass', section: 'hexagon', size: '1/2in', length: '12in' },
  source: 'area x length x density of the table of materials',
  arguments: [
    { name: 'material', kind: 'material', about: 'what it is made of', required: true },
    { name: 'section', kind: 'choice', choices: ['round', 'square', 'hexagon', 'flat', 'tube'], about: 'shape of the bar', default: 'round' },
    { name: 'size', kind: 'length', about: 'diameter, side, across flats, or thickness of a flat', required: true },
    { name: 'width', kind: 'length', about: 'width of a flat' },
    { name: 'bore', kind: 'length', about: 'bore of a tube' },
    { name: 'length', kind: 'length', about: 'length', required: true },
  ],
  compute(values, context) {
    const material = findMaterial(values.text('material'));
    const area = sectionArea(values.text('section'), values.number('size'), values.numberOr('width', undefined), values.numberOr('bore', undefined));
    const volume = area * values.number('length');
    const mass = (volume * material.density) / 1e9;
    return {
      result: { massKg: mass, massLb: mass / 0.45359237, areaMm2: area, volumeMm3: volume, densityKgPerM3: material.density, source: material.source },
      steps: [`${figures(area)} mm2 x ${say(values.number('length'), context)} x ${material.density} kg/m3 = ${figures(mass, 3)} kg (${figures(mass / 0.45359237, 3)} lb)`],
    };
  },
};
