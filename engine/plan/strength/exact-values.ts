import type { Parameters, Values } from '../../part/parameters.js';
import type { Drill } from '../../trade/drills.js';
import type { Thread } from '../../trade/threads.js';

/** A thread as exact scaling would have it: no standard has it. */
const exactThread = (thread: Thread, factor: number): Thread => ({
  ...thread,
  designation: `${thread.designation} x ${Number(factor.toPrecision(4))}`,
  major: thread.major * factor,
  pitch: thread.pitch * factor,
  pitchDiameter: thread.pitchDiameter * factor,
  minorInternal: thread.minorInternal * factor,
  minorExternal: thread.minorExternal * factor,
  depth: thread.depth * factor,
  stressArea: thread.stressArea * factor ** 2,
  classes: thread.classes.map((limits) => ({ ...limits, min: limits.min * factor, max: limits.max * factor })),
});

/** The values of a part whose every length is the factor larger, whether or not it can be bought or made so. */
export function exactValues<P extends Parameters>(parameters: P, values: Values<P>, factor: number): Values<P> {
  const scaled = Object.entries(values as Readonly<Record<string, number | string | Thread | Drill>>).map(([name, value]) => {
    const kind = parameters[name]?.kind;
    if (typeof value === 'number') return [name, kind === 'angle' || kind === 'count' ? value : value * factor] as const;
    if (typeof value === 'string') return [name, value] as const;
    return [name, 'major' in value ? exactThread(value, factor) : { ...value, diameter: value.diameter * factor }] as const;
  });
  return Object.fromEntries(scaled) as Values<P>;
}
