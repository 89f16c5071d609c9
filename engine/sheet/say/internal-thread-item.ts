import type { InternalThreadSize } from '../../part/cut.js';
import { pointAtAngle } from './extremes.js';
import type { PrintItem, Target } from './item.js';

/** A thread in a bore: a leader to its crest where a section lays it open, else to its circle as seen from the mouth. */
export function internalThreadItem(size: InternalThreadSize): PrintItem {
  const { designation } = size.thread;
  return {
    id: `thread ${size.cut}`,
    about: size.cut,
    lines: [`${designation}${size.thread.class === undefined ? '' : `-${size.thread.class}`}`],
    record: { kind: 'thread', feature: size.cut, nominal: size.thread.major, measure: 'length' },
    find: (plan) => {
      const own = plan.view.curves.filter(({ role, visible, name }) => visible && role === 'thread' && name === `thread ${designation}`);
      const lines = own.flatMap(({ geometry }): readonly Target[] =>
        geometry.kind === 'line' ? [0.5, 0.3, 0.7].map((share): Target => ({ at: [geometry.from[0] + (geometry.to[0] - geometry.from[0]) * share, geometry.from[1] + (geometry.to[1] - geometry.from[1]) * share], radius: 0, end: 'arrow' })) : [],
      );
      if (lines.length > 0) return { kind: 'leader', cost: 0, targets: lines };
      const arcs = own.flatMap(({ geometry }): readonly Target[] => (geometry.kind === 'arc' ? [0.2, 0.5, 0.8].map((share): Target => ({ at: pointAtAngle(geometry, geometry.start + geometry.sweep * share), radius: 0, end: 'arrow' })) : []));
      return arcs.length === 0 ? undefined : { kind: 'leader', cost: 0.7, targets: arcs };
    },
  };
}
