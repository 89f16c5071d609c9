import { dot } from '../../geometry/vector.js';
import type { Part } from '../../part/part.js';
import type { Axis } from '../../part/station.js';
import { vectorOf } from '../../part/author/directions.js';

/**
 * Why the trials of a piece cannot stand side by side along an axis, for the middle of a sentence; undefined where they can:
 * flat bar, milled or drilled throughout, every cut from the side, nothing that swings about one centre or sits on one fixture.
 */
export function whyNotBeside(piece: Part, axis: Axis): string | undefined {
  const along = vectorOf(`+${axis}`);
  if (piece.stock.shape !== 'rectangular') return `the blank is a ${piece.stock.shape} bar, which turns about one axis`;
  for (const { number, setUp, cuts } of piece.operations) {
    const { id, machine, up, grip } = piece.setUps.find((each) => each.id === setUp)!;
    if (machine === 'lathe') return `operation ${number} turns the work`;
    if (Math.abs(dot(vectorOf(up), along)) > 1e-9) return `in set-up ${id} operation ${number} is cut from an end of the bar`;
    if (grip?.kind === 'fixture') return `operation ${number} is done in a fixture, which holds one piece`;
    for (const { forms, sizes, name } of cuts) {
      if (forms.some((form) => form.kind === 'half-space' && Math.abs(dot(form.normal, along)) > 1e-9)) return `operation ${number} cuts off what would stand beside it`;
      if (sizes.some(({ kind }) => kind === 'arc-slot' || kind === 'arc-sides')) return `the ${name} of operation ${number} swings about a centre of its own`;
    }
  }
  return undefined;
}
