import { UserError } from '../../units/user-error.js';
import { findMaterial } from '../materials.js';
import { figures, say, type Sum } from './sum.js';

export const pressFit: Sum = {
  name: 'press-fit',
  summary: 'pressure, pushing force and torque of a press or shrink fit',
  example: { diameter: '12mm', outside: '25mm', length: '15mm', interference: '0.02mm', hub: 'cast iron', shaft: 'silver steel' },
  source: 'thick-walled rings (Lame): p = (i/d) / [((D^2+d^2)/(D^2-d^2) + nu)/E of the hub + ((d^2+b^2)/(d^2-b^2) - nu)/E of the shaft]; force = mu p pi d l',
  arguments: [
    { name: 'diameter', kind: 'length', about: 'diameter of the fit', required: true },
    { name: 'outside', kind: 'length', about: 'outside diameter of the hub', required: true },
    { name: 'length', kind: 'length', about: 'length of the fit', required: true },
    { name: 'interference', kind: 'length', about: 'interference on the diameter', required: true },
    { name: 'bore', kind: 'length', about: 'bore of a hollow shaft', default: '0 mm', sign: 'not-negative' },
    { name: 'hub', kind: 'material', about: 'material of the hub', required: true },
    { name: 'shaft', kind: 'material', about: 'material of the shaft', default: 'bright mild steel' },
    { name: 'friction', kind: 'number', about: 'coefficient of friction', default: '0.12' },
  ],
  compute(values, context) {
    const [d, outside, bore] = [values.number('diameter'), values.number('outside'), values.number('bore')];
    if (outside <= d) throw new UserError(`the hub's outside ${say(outside, context)} must be over the fit ${say(d, context)}.`);
    if (bore >= d) throw new UserError(`the shaft's bore ${say(bore, context)} must be under the fit ${say(d, context)}.`);
    const [hub, shaft] = [findMaterial(values.text('hub')), findMaterial(values.text('shaft'))];
    const wall = (outside ** 2 + d ** 2) / (outside ** 2 - d ** 2);
    const inner = (d ** 2 + bore ** 2) / (d ** 2 - bore ** 2);
    const yielding = (wall + hub.poisson) / (hub.modulus * 1000) + (inner - shaft.poisson) / (shaft.modulus * 1000);
    const pressure = values.number('interference') / d / yielding;
    const force = values.number('friction') * pressure * Math.PI * d * values.number('length');
    const hoop = pressure * wall;
    return {
      result: { pressureMPa: pressure, pushForceN: force, torqueNm: (force * d) / 2000, hubStressMPa: hoop, hubYieldMPa: hub.yieldStrength, hubYields: hoop > hub.yieldStrength, source: hub.source },
      steps: [
        `interference ${say(values.number('interference'), context)} on ${say(d, context)}: pressure ${figures(pressure, 3)} MPa`,
        `push ${figures(force, 3)} N with friction ${values.number('friction')}; turning ${figures((force * d) / 2000, 3)} N m`,
        `stress round the hub ${figures(hoop, 3)} MPa of ${hub.yieldStrength}${hoop > hub.yieldStrength ? ': it yields, and holds less than this' : ''}`,
      ],
    };
  },
};

export const shrinkHeat: Sum = {
  name: 'shrink-heat',
  summary: 'how much hotter the hub must be to slip on',
  example: { diameter: '50mm', interference: '0.05mm', material: 'mild steel' },
  source: 'rise = (interference + clearance to slip on) / (expansion x diameter)',
  arguments: [
    { name: 'diameter', kind: 'length', about: 'diameter of the fit', required: true },
    { name: 'interference', kind: 'length', about: 'interference on the diameter', required: true },
    { name: 'clearance', kind: 'length', about: 'clearance to slip on', default: '0.02 mm', sign: 'not-negative' },
    { name: 'material', kind: 'material', about: 'material of the hub', required: true },
  ],
  compute(values, context) {
    const material = findMaterial(values.text('material'));
    const growth = values.number('interference') + values.number('clearance');
    const rise = growth / (material.expansion * 1e-6 * values.number('diameter'));
    return {
      result: { riseK: rise, growth },
      steps: [`to grow ${say(growth, context)}: rise of ${figures(rise, 3)} K (${figures(rise * 1.8, 3)} F) above the shaft`],
    };
  },
};
