import { mirrorVector } from '../../part/mirror.js';
import type { Phrase } from '../../part/cut.js';
import type { Part, SetUp } from '../../part/part.js';
import { directionOnMachine, machineFrame } from '../../plan/machine-frame.js';
import type { TestPiece } from '../../plan/rehearsal/piece.js';
import { rungsByTrial } from '../../plan/rehearsal/rungs.js';
import { shiftOf } from '../../plan/rehearsal/side-by-side.js';
import type { PageSection } from './page-section.js';

/** So many set-ups have room for a column each; more stand under each other. */
const most = 4;

/** Where the zero of each trial is in each set-up, for trials that stand side by side; nothing else. */
export function trialsTable(piece: TestPiece, hand: Part): Pick<PageSection, 'table'> {
  const { beside, trials, ladder } = piece;
  if (beside === undefined) return {};
  const setUps = hand.setUps.filter(({ id }) => hand.operations.some(({ setUp }) => setUp === id));
  const order = ladder === undefined ? [] : rungsByTrial(ladder);
  const tries = (trial: number): Phrase => {
    if (ladder === undefined) return [];
    const i = order[trial - 1]!;
    if (ladder.kind === 'drills') return [`drill ${ladder.rungs[i]!.drill.name}`];
    return ['mouth ', { length: ladder.rungs[i]!.diameter, sign: 'diameter' }];
  };
  const numbers = Array.from({ length: trials }, (_, i) => i + 1);
  if (setUps.length > most)
    return {
      table: {
        columns: [{ heading: 'Trial', share: 0.15 }, { heading: 'Tries', share: 0.25 }, { heading: 'Set-up', share: 0.25 }, { heading: 'Zero moves on', share: 0.35 }],
        rows: numbers.flatMap((trial) => setUps.map((setUp) => ({ cells: [[String(trial)], ladder === undefined ? ['as the part'] : tries(trial), [setUp.id], moves(piece, hand, setUp, trial)] }))),
      },
    };
  const share = (ladder === undefined ? 0.85 : 0.6) / setUps.length;
  return {
    table: {
      columns: [{ heading: 'Trial', share: 0.15 }, ...(ladder === undefined ? [] : [{ heading: 'Tries', share: 0.25 }]), ...setUps.map(({ id }) => ({ heading: `Set-up ${id}: zero moves on`, share }))],
      rows: numbers.map((trial) => ({ cells: [[String(trial)], ...(ladder === undefined ? [] : [tries(trial)]), ...setUps.map((setUp) => moves(piece, hand, setUp, trial))] })),
    },
  };
}

/** How far the zero of a trial is from that of the first, along the axes of the machine. */
function moves({ beside }: TestPiece, hand: Part, setUp: SetUp, trial: number): Phrase {
  if (trial === 1) return ['as set'];
  const shift = shiftOf(beside!, trial);
  const onMachine = directionOnMachine(machineFrame(hand, setUp), hand.hand === 'left' ? mirrorVector(hand.handAxis, shift) : shift);
  return onMachine.flatMap((value, i): Phrase => (Math.abs(value) < 1e-6 ? [] : [`${'XYZ'.charAt(i)} ${value < 0 ? '\u2212' : '+'}`, { length: Math.abs(value) }]));
}
