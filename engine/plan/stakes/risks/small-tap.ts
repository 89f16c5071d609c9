import type { HoleSize, TappingSize } from '../../../part/cut.js';
import type { Operation, Part } from '../../../part/part.js';
import { tapMargin, tapStrength, type TapKind } from '../../../trade/sums/tap-torque.js';
import type { Thread } from '../../../trade/thread.js';
import { findThread } from '../../../trade/threads.js';
import { UserError } from '../../../units/user-error.js';
import { feltTorque } from '../../data/stake-limits.js';
import { diameterThere, holeSizes, keyOf } from '../../hole-places.js';
import { between, holesInWords, riskOf, say, type RiskFinder } from '../chance.js';

/** The strength (N m) and margin to which the chance of the table belongs. */
const [usualStrength, usualMargin] = [0.3, 2];

/** So many pitches below a blind thread give the chips room. */
const chipPitches = 3;

function threadOf(designation: string): Thread | undefined {
  try {
    return findThread(designation);
  } catch (fault) {
    if (fault instanceof UserError) return undefined;
    throw fault;
  }
}

/** What kind of tap finishes the hole, by its words: a bottoming or plug tap cuts on few teeth. */
const kindOf = ({ cutter }: Operation): TapKind => (/spiral.?point/i.test(cutter.name) ? 'spiral-point' : /spiral.?flute/i.test(cutter.name) ? 'spiral-flute' : /bottom/i.test(cutter.name) ? 'bottoming' : 'taper');

/** The blind hole that a thread is cut in. */
function holeUnder(part: Part, operation: Operation, size: TappingSize): HoleSize | undefined {
  const sizes = part.operations.slice(0, part.operations.indexOf(operation) + 1).flatMap(holeSizes);
  return sizes.find((other): other is HoleSize => other.kind === 'hole' && other.points.some((point) => keyOf(point) === keyOf(size.points[0]!)));
}

/**
 * A tap that breaks before a hand feels it, and stays in the hole. The torque of tapping against that of twisting the tap off;
 * the margin hangs on pitch over diameter and drill, the strength on size. More with no room for chips below the thread.
 */
export const smallTap: RiskFinder = (facts) =>
  holeSizes(facts.operation).filter((size): size is TappingSize => size.kind === 'tapping').flatMap((size) => {
    const { part, operation, material } = facts;
    const thread = threadOf(size.thread.designation);
    const hole = diameterThere(part, operation, size) ?? size.thread.minor;
    if (thread === undefined || hole >= thread.major) return [];
    const tap = kindOf(operation);
    const strength = tapStrength(thread);
    if (strength > feltTorque) return [];
    const load = material === undefined ? undefined : tapMargin(thread, hole, material, tap);
    const margin = load?.margin ?? usualMargin;
    const drilled = holeUnder(part, operation, size)?.depth?.value;
    const room = size.depth === undefined || drilled === undefined ? undefined : (drilled - size.depth.value) / thread.pitch;
    const tight = room !== undefined && room < chipPitches - 1e-6;
    const factor = between(usualMargin / margin, 0.5, 3) * between(Math.sqrt(usualStrength / strength), 0.5, 2.5) * (tight ? 1.5 : 1);
    return [
      riskOf(facts, {
        kind: 'small tap',
        factor,
        holes: size.points.length,
        because: [
          load === undefined
            ? `tap ${thread.designation} in ${holesInWords(size.points.length)}: twists off at ${say(strength, 3)} N m; what it takes is not known, the material is not in the tables`
            : `tap ${thread.designation} in ${holesInWords(size.points.length)}: takes ${say(load.torque, 3)} N m and twists off at ${say(strength, 3)}, a margin of ${say(margin, 1)}`,
          ...(tight ? [`; only ${say(room, 1)} pitches below the thread for chips`] : []),
        ],
        figures: { thread: thread.designation, tap, hole, strengthNm: strength, ...(load === undefined ? {} : { torqueNm: load.torque, margin }), ...(room === undefined ? {} : { pitchesBelow: room }) },
      }),
    ];
  });
