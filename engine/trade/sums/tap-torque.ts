import { UserError } from '../../units/user-error.js';
import { findDrill, type Drill } from '../drills.js';
import { findMaterial, type Material } from '../materials.js';
import { tappingDrill, threadPercent } from '../tapping.js';
import type { Thread } from '../thread.js';
import { findThread } from '../threads.js';
import { tangent } from './geometry-of-degrees.js';
import { figures, say, type Sum } from './sum.js';

export type TapKind = 'taper' | 'bottoming' | 'spiral-point' | 'spiral-flute';

/** Factors K for coarse and fine threads by tap and work, from a tap maker's page (read); gaps filled with the next row. */
const factors: Readonly<Record<TapKind, Readonly<Record<'steel' | 'brass' | 'other', readonly [coarse: number, fine: number]>>>> = {
  taper: { steel: [1.35, 1.15], brass: [1.6, 1.12], other: [1.25, 1.15] },
  bottoming: { steel: [1.43, 1.5], brass: [1.6, 1.5], other: [1.3, 1.25] },
  'spiral-point': { steel: [0.95, 1], brass: [0.75, 1], other: [0.95, 1] },
  'spiral-flute': { steel: [1.05, 1.1], brass: [0.85, 1.1], other: [1.05, 1.1] },
};

/** Factor K of the torque equation for a thread, a material and a tap. */
export function factorK(thread: Thread, material: Material, tap: TapKind): number {
  const family = material.kind === 'steel' ? 'steel' : material.kind === 'copper alloy' ? 'brass' : 'other';
  const fine = thread.pitch / thread.major < 0.13;
  return factors[tap][family][fine ? 1 : 0];
}

/**
 * Torque (N m) of cutting a thread: tan(half the form angle) kc K (D - d)^2 (D + 2 d) / 24000, N/mm2 and mm (a tap
 * maker's published equation; kc belongs to it alone).
 */
export function tapTorque(thread: Thread, hole: number, cuttingForce: number, factor: number): number {
  return (tangent(thread.formAngle / 2) * cuttingForce * factor * (thread.major - hole) ** 2 * (thread.major + 2 * hole)) / 24000;
}

/**
 * Torque (N m) at which a tap of high-speed steel twists off, by the model pi d^3 tau / 16 with the web 0.6 of the root
 * diameter and tau 900 MPa: the low end of both assumptions, for no published breaking torques were found.
 */
export const tapStrength = (thread: Thread): number => (Math.PI * (0.6 * thread.minorExternal) ** 3 * 900) / 16 / 1000;

/** Torque of tapping and of the tap's breaking, N m, and how many times the one goes into the other. */
export function tapMargin(thread: Thread, hole: number, material: Material, tap: TapKind): { readonly torque: number; readonly strength: number; readonly margin: number } {
  const torque = tapTorque(thread, hole, material.tapCutting, factorK(thread, material, tap));
  const strength = tapStrength(thread);
  return { torque, strength, margin: strength / torque };
}

const drillJson = (thread: Thread, drill: Drill) => ({ name: drill.name, diameter: drill.diameter, percent: threadPercent(thread, drill.diameter).percent });

export const tapTorqueSum: Sum = {
  name: 'tap-torque',
  summary: 'torque of tapping against the torsional strength of the tap, and a drill that is kinder to it',
  example: { thread: '0-80', material: 'silver steel', drill: '#55' },
  source: "a tap maker's torque equation; strength of the tap by a model of a solid shaft (assumed web and shear strength)",
  arguments: [
    { name: 'thread', kind: 'thread', about: 'the thread', required: true },
    { name: 'material', kind: 'material', about: 'what is tapped', required: true },
    { name: 'drill', kind: 'drill', about: 'tapping drill; that for the engagement if not given' },
    { name: 'engagement', kind: 'number', about: 'percentage of thread, where no drill is given', default: '65' },
    { name: 'tap', kind: 'choice', choices: ['taper', 'bottoming', 'spiral-point', 'spiral-flute'], about: 'kind of tap', default: 'taper' },
  ],
  compute(values, context) {
    const thread = findThread(values.text('thread'));
    const material = findMaterial(values.text('material'));
    const drill = values.has('drill') ? findDrill(values.text('drill')) : tappingDrill(thread, values.number('engagement')).drill;
    if (drill.diameter >= thread.major) throw new UserError(`drill ${drill.name} leaves no thread of ${thread.designation}: choose one under ${+thread.major.toFixed(4)} mm.`);
    const factor = factorK(thread, material, values.text('tap') as TapKind);
    const torque = (hole: number): number => tapTorque(thread, hole, material.tapCutting, factor);
    const strength = tapStrength(thread);
    const kinder = tappingDrill(thread, 50).drill;
    const better = kinder.diameter > drill.diameter + 1e-6 ? kinder : undefined;
    const margin = (hole: number): number => strength / torque(hole);
    return {
      result: {
        torqueNm: torque(drill.diameter),
        strengthNm: strength,
        margin: margin(drill.diameter),
        drill: drillJson(thread, drill),
        better: better === undefined ? null : { ...drillJson(thread, better), torqueNm: torque(better.diameter), margin: margin(better.diameter) },
        source: 'model only: no published breaking torques of taps were found',
      },
      steps: [
        `${thread.designation} in ${material.name} from a ${say(drill.diameter, context)} hole (${drill.name})`,
        `torque = tan(${thread.formAngle / 2}) x ${material.tapCutting} x ${factor} x (D - d)^2 (D + 2 d) / 24000 = ${figures(torque(drill.diameter), 3)} N m for a sharp tap`,
        `the tap twists off at about ${figures(strength, 3)} N m: margin ${figures(margin(drill.diameter), 3)}`,
        ...(better === undefined ? [] : [`with ${better.name} (${figures(threadPercent(thread, better.diameter).percent, 3)} %) the margin is ${figures(margin(better.diameter), 3)}`]),
      ],
    };
  },
};
