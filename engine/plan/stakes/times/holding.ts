import { handlingMinutes, holdingMinutes, type HoldingKind } from '../../data/handling.js';
import { isAngled, type OperationFacts } from '../facts.js';

const byWords: readonly (readonly [RegExp, HoldingKind])[] = [
  [/split bush/i, 'split bush'],
  [/between centres/i, 'between centres'],
  [/four-jaw/i, 'four-jaw chuck'],
  [/three-jaw|self-centring/i, 'three-jaw chuck'],
  [/collet/i, 'collet'],
  [/fixture|jig/i, 'fixture'],
  [/clamp|angle plate|faceplate/i, 'clamps'],
  [/vice/i, 'vice'],
];

/** What kind of holding a set-up is; of its words where it does not say what takes hold. */
export function holdingOf({ setUp }: Pick<OperationFacts, 'setUp'>): HoldingKind {
  if (setUp.machine === 'bench') return 'bench';
  if (isAngled(setUp) && setUp.grip?.kind !== 'fixture') return 'angle packing';
  const split = byWords[0]![0].test(setUp.holding) ? 'split bush' : undefined;
  return split ?? setUp.grip?.kind ?? byWords.find(([words]) => words.test(setUp.holding))?.[1] ?? (setUp.machine === 'lathe' ? 'three-jaw chuck' : 'vice');
}

/** Minutes to take the work into a set-up, have it true and find its zero. */
export function setUpMinutes(facts: Pick<OperationFacts, 'setUp' | 'frame'>): number {
  const { setUp, frame } = facts;
  const holding = holdingMinutes[holdingOf(facts)];
  if (setUp.machine === 'bench') return holding;
  if (setUp.machine === 'lathe') return holding + handlingMinutes.zeroAlong;
  const across = [frame.known.x, frame.known.y].filter(Boolean).length;
  return holding + across * handlingMinutes.zeroAcross + (frame.known.z ? handlingMinutes.zeroAlong : 0);
}
