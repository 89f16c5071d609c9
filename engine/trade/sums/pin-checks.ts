import { findMaterial } from '../materials.js';
import { findThread } from '../threads.js';
import { figures, say, type Sum } from './sum.js';

export const shear: Sum = {
  name: 'shear',
  summary: 'shear stress in a pin',
  example: { force: '600N', diameter: '4mm', planes: '2', material: 'silver steel' },
  source: 'tau = F / (planes x pi d^2 / 4); shear yield 0.577 of the yield (distortion energy)',
  arguments: [
    { name: 'force', kind: 'force', about: 'force across the pin', required: true },
    { name: 'diameter', kind: 'length', about: 'diameter of the pin', required: true },
    { name: 'planes', kind: 'choice', choices: ['1', '2'], about: '1 for a pin held on one side, 2 for a fork', default: '2' },
    { name: 'material', kind: 'material', about: 'material of the pin' },
  ],
  compute(values, context) {
    const planes = Number(values.text('planes'));
    const stress = values.number('force') / (planes * (Math.PI / 4) * values.number('diameter') ** 2);
    const material = values.has('material') ? findMaterial(values.text('material')) : undefined;
    const safety = material === undefined ? undefined : (0.577 * material.yieldStrength) / stress;
    return {
      result: { stressMPa: stress, planes, ...(safety === undefined ? {} : { safety }) },
      steps: [
        `${figures(values.number('force'))} N over ${planes} x pi ${say(values.number('diameter'), context)}^2 / 4 = ${figures(stress)} MPa`,
        ...(safety === undefined ? [] : [`shear yield 0.577 x ${material?.yieldStrength ?? 0} MPa: ${figures(safety, 3)} times`]),
      ],
    };
  },
};

export const bearingPressure: Sum = {
  name: 'bearing-pressure',
  summary: 'mean pressure of a pin or journal in its bearing',
  example: { force: '600N', diameter: '8mm', length: '12mm', material: 'gunmetal' },
  source: 'p = F / (d l), projected area; limits of the table of materials',
  arguments: [
    { name: 'force', kind: 'force', about: 'force on the bearing', required: true },
    { name: 'diameter', kind: 'length', about: 'diameter of the pin', required: true },
    { name: 'length', kind: 'length', about: 'length of the bearing', required: true },
    { name: 'material', kind: 'material', about: 'material of the bearing' },
  ],
  compute(values, context) {
    const pressure = values.number('force') / (values.number('diameter') * values.number('length'));
    const material = values.has('material') ? findMaterial(values.text('material')) : undefined;
    const safety = material === undefined ? undefined : material.bearingPressure / pressure;
    return {
      result: { pressureMPa: pressure, ...(material === undefined ? {} : { limitMPa: material.bearingPressure, safety: safety ?? 0 }) },
      steps: [
        `${figures(values.number('force'))} N / (${say(values.number('diameter'), context)} x ${say(values.number('length'), context)}) = ${figures(pressure)} MPa`,
        ...(material === undefined ? [] : [`${material.name} usually carries ${material.bearingPressure} MPa: ${figures(safety ?? 0, 3)} times`]),
      ],
    };
  },
};

export const screwLoad: Sum = {
  name: 'screw-load',
  summary: 'stress in a screw under tension, and the torque that tightens it',
  example: { thread: '2 BA', material: 'bright mild steel' },
  source: 'F / stress area; torque 0.2 F d (dry, common practice)',
  arguments: [
    { name: 'thread', kind: 'thread', about: 'the thread', required: true },
    { name: 'material', kind: 'material', about: 'material of the screw', default: 'bright mild steel' },
    { name: 'force', kind: 'force', about: 'tension; 0.6 of the yield if not given' },
  ],
  compute(values, context) {
    const thread = findThread(values.text('thread'));
    const material = findMaterial(values.text('material'));
    const force = values.numberOr('force', 0.6 * thread.stressArea * material.yieldStrength);
    const stress = force / thread.stressArea;
    return {
      result: { forceN: force, stressMPa: stress, safety: material.yieldStrength / stress, torqueNm: (0.2 * force * thread.major) / 1000, stressAreaMm2: thread.stressArea },
      steps: [
        `${figures(force)} N / ${figures(thread.stressArea)} mm2 = ${figures(stress)} MPa of ${material.yieldStrength}`,
        `tighten to 0.2 x ${figures(force)} N x ${say(thread.major, context)} = ${figures((0.2 * force * thread.major) / 1000, 3)} N m`,
      ],
    };
  },
};
