import { scale } from '../../geometry/vector.js';
import { centreHoles } from './centre-holes.js';
import { commonPractice, frameOf, isFirst, type Check } from './context.js';

/** Between centres: a centre hole in each end. */
export const gripBetweenCentres: Check = (context, state) => {
  if (!isFirst(context, state)) return [];
  const frame = frameOf(context, state);
  const { operation } = state;
  const ends = [
    ['tailstock', scale(frame.z, -1)],
    ['headstock', frame.z],
  ] as const;
  return ends.flatMap(([end, direction]) =>
    centreHoles(context.part, operation, direction).length > 0
      ? []
      : [{ check: 'grip' as const, operation: operation.number, gravity: 'fatal' as const, figures: { end }, sentence: [`Nothing to hold by: the end toward the ${end} has no centre hole yet`], source: commonPractice }],
  );
};
