import { UserError } from '../../units/user-error.js';
import { findDrill } from '../drills.js';
import { findMaterial } from '../materials.js';
import type { Thread, ThreadClassLimits } from '../thread.js';
import { findThread } from '../threads.js';
import { tangent } from './geometry-of-degrees.js';
import { figures, say, type Sum } from './sum.js';

const limit = (thread: Thread, of: ThreadClassLimits['of'], side: 'min' | 'max', otherwise: number): number => {
  const found = thread.classes.find((row) => row.of === of);
  return found === undefined ? otherwise : found[side];
};

/**
 * Area in shear for each millimetre of engagement, mm2 (ASME B1.1 appendix B, FED-STD-H28): of the screw's threads at the
 * nut's minor diameter and of the nut's at the screw's major diameter, with the limits of classes 2A and 2B where the
 * series has them, basic sizes otherwise.
 */
export function shearAreas(thread: Thread, hole?: number): { readonly screw: number; readonly nut: number } {
  const rise = tangent(thread.formAngle / 2);
  const minor = hole ?? limit(thread, 'minorInternal', 'max', thread.minorInternal);
  const major = limit(thread, 'majorExternal', 'min', thread.major);
  const pitchScrew = limit(thread, 'pitchDiameterExternal', 'min', thread.pitchDiameter);
  const pitchNut = limit(thread, 'pitchDiameterInternal', 'max', thread.pitchDiameter);
  const perPitch = Math.PI / thread.pitch;
  return {
    screw: perPitch * minor * (thread.pitch / 2 + rise * (pitchScrew - minor)),
    nut: perPitch * major * (thread.pitch / 2 + rise * (major - pitchNut)),
  };
}

/**
 * Engagement (mm) at which the screw breaks before either thread strips: 2 As / area of the screw's threads, times the
 * ratio of the strengths where the nut's threads are the weaker (FED-STD-H28; shear strength is half the tensile).
 */
export function engagementLength(thread: Thread, screwStrength: number, nutStrength: number, hole?: number): { readonly length: number; readonly strips: 'screw' | 'nut' } {
  const { screw, nut } = shearAreas(thread, hole);
  const equal = (2 * thread.stressArea) / screw;
  const ratio = (screw * screwStrength) / (nut * nutStrength);
  return ratio > 1 ? { length: equal * ratio, strips: 'nut' } : { length: equal, strips: 'screw' };
}

export const threadEngagement: Sum = {
  name: 'thread-engagement',
  summary: 'how long a thread must be engaged for the screw to break before the thread strips',
  example: { thread: 'M3', screw: 'silver steel', nut: 'brass' },
  source: 'ASME B1.1 appendix B and FED-STD-H28: length of engagement',
  arguments: [
    { name: 'thread', kind: 'thread', about: 'the thread', required: true },
    { name: 'screw', kind: 'material', about: 'material of the screw', default: 'bright mild steel' },
    { name: 'nut', kind: 'material', about: 'material of the tapped part', required: true },
    { name: 'drill', kind: 'drill', about: 'tapping drill; the largest minor diameter of the class if not given' },
    { name: 'length', kind: 'length', about: 'engagement to check' },
  ],
  compute(values, context) {
    const thread = findThread(values.text('thread'));
    const screw = findMaterial(values.text('screw'));
    const nut = findMaterial(values.text('nut'));
    const hole = values.has('drill') ? findDrill(values.text('drill')).diameter : undefined;
    if (hole !== undefined && hole >= thread.major) throw new UserError(`drill ${values.text('drill')} leaves no thread of ${thread.designation}.`);
    const { length, strips } = engagementLength(thread, screw.tensileStrength, nut.tensileStrength, hole);
    const areas = shearAreas(thread, hole);
    const breakingLoad = thread.stressArea * screw.tensileStrength;
    const checked = values.numberOr('length', undefined);
    const stripLoad = checked === undefined ? undefined : (checked / 2) * Math.min(areas.screw * screw.tensileStrength, areas.nut * nut.tensileStrength);
    return {
      result: {
        length,
        diameters: length / thread.major,
        turns: length / thread.pitch,
        strips,
        breakingLoadN: breakingLoad,
        ...(stripLoad === undefined ? {} : { strippingLoadN: stripLoad, enough: stripLoad >= breakingLoad }),
      },
      steps: [
        `screw breaks at ${figures(thread.stressArea)} mm2 x ${screw.tensileStrength} MPa = ${figures(breakingLoad)} N`,
        `shear areas for each mm of engagement: screw ${figures(areas.screw)}, tapped part ${figures(areas.nut)} mm2`,
        `of the two threads that of the ${strips === 'nut' ? 'tapped part' : 'screw'} is the weaker; engagement needed ${say(length, context)} = ${figures(length / thread.major, 3)} D`,
        ...(stripLoad === undefined ? [] : [`at ${say(checked ?? 0, context)} it strips at ${figures(stripLoad)} N`]),
      ],
    };
  },
};
