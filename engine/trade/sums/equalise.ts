import { say, type Sum, type SumContext } from './sum.js';

/** What to take off each side, and where that leaves the feature. */
export interface Removal {
  readonly left: number;
  readonly right: number;
  /** Off centre towards the right, and width under size, mm. */
  readonly offCentre: number;
  readonly widthUnder: number;
}

export interface Equalising {
  /** Both sides come to the target within the tolerance. */
  readonly possible: boolean;
  /** What can be saved: both, or else the whole width off centre, or only the centre under size. */
  readonly saves: 'both' | 'width' | 'centre' | 'none';
  /** What to do: nothing is taken off where the width is lost, for that needs a decision first. */
  readonly remove: Removal;
  readonly keepWidth?: Removal;
  readonly keepCentre?: Removal;
}

/**
 * What to take off each side so that both stand `target` from the reference. A side under by no more than `tolerance` is
 * left alone. Where one is under by more, the width can be kept if the other side has metal for it (the feature goes off
 * centre by half the difference of the sides), or the centre by bringing the other side down to match.
 */
export function equaliseSides(left: number, right: number, target: number, tolerance: number): Equalising {
  const slack = 1e-9;
  const low = Math.min(left, right);
  const end = (leftEnd: number, rightEnd: number): Removal => removal(left, right, leftEnd, rightEnd, target);
  if (low >= target - tolerance - slack) return { possible: true, saves: 'both', remove: end(Math.min(left, target), Math.min(right, target)) };
  const keepCentre = low > 0 ? end(low, low) : undefined;
  if (left + right >= 2 * target - slack) {
    const keepWidth = left < right ? end(left, 2 * target - left) : end(2 * target - right, right);
    return { possible: false, saves: 'width', remove: keepWidth, keepWidth, ...(keepCentre === undefined ? {} : { keepCentre }) };
  }
  return { possible: false, saves: keepCentre === undefined ? 'none' : 'centre', remove: end(left, right), ...(keepCentre === undefined ? {} : { keepCentre }) };
}

function removal(left: number, right: number, leftEnd: number, rightEnd: number, target: number): Removal {
  const tidy = (value: number): number => Number(value.toFixed(9)) + 0;
  return {
    left: tidy(left - leftEnd),
    right: tidy(right - rightEnd),
    offCentre: tidy((rightEnd - leftEnd) / 2),
    widthUnder: tidy(Math.max(0, 2 * target - leftEnd - rightEnd)),
  };
}

function advice({ saves, keepWidth, keepCentre }: Equalising, context: SumContext): readonly string[] {
  if (saves === 'both') return ['both sides come to the target'];
  const lines: string[] = ['STOP: one side is already under, and size and centre cannot both be had'];
  if (keepWidth !== undefined) lines.push(`the width can be saved: take off left ${say(keepWidth.left, context)}, right ${say(keepWidth.right, context)}; the feature stands ${say(Math.abs(keepWidth.offCentre), context)} off centre`);
  else lines.push('the width is lost: shim, bush or remake');
  if (keepCentre !== undefined) lines.push(`the centre can be saved: take off left ${say(keepCentre.left, context)}, right ${say(keepCentre.right, context)}; the width comes ${say(keepCentre.widthUnder, context)} under size`);
  return lines;
}

export const equalise: Sum = {
  name: 'equalise',
  summary: 'how much to take off each side to bring a feature to centre and to size, from readings of both sides',
  example: { left: '3.40mm', right: '3.46mm', target: '3.30mm', tolerance: '0.02mm' },
  source: 'take off reading less target on each side',
  arguments: [
    { name: 'left', kind: 'length', about: 'what stands on the left, from the reference to the face', required: true, sign: 'not-negative' },
    { name: 'right', kind: 'length', about: 'what stands on the right', required: true, sign: 'not-negative' },
    { name: 'target', kind: 'length', about: 'what shall stand on each side', required: true },
    { name: 'tolerance', kind: 'length', about: 'how much under the target a side may stay', default: '0 mm', sign: 'not-negative' },
  ],
  compute(values, context) {
    const [left, right, target] = [values.number('left'), values.number('right'), values.number('target')];
    const sides = equaliseSides(left, right, target, values.number('tolerance'));
    const { remove, possible, saves, keepWidth, keepCentre } = sides;
    return {
      result: {
        left: { remove: remove.left },
        right: { remove: remove.right },
        possible,
        saves,
        offCentre: remove.offCentre,
        widthUnder: remove.widthUnder,
        keepWidth: keepWidth === undefined ? null : { ...keepWidth },
        keepCentre: keepCentre === undefined ? null : { ...keepCentre },
      },
      steps: [
        `left ${say(left, context)} less ${say(target, context)}: ${say(left - target, context)} over`,
        `right ${say(right, context)} less ${say(target, context)}: ${say(right - target, context)} over`,
        `take off left ${say(remove.left, context)}, right ${say(remove.right, context)}; then ${say(left + right - remove.left - remove.right, context)} over both, of ${say(2 * target, context)}`,
        ...advice(sides, context),
      ],
    };
  },
};
