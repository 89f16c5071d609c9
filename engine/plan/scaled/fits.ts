import type { Size } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import type { Sized } from '../../part/tolerance.js';

/** A fit of the part: its class, and its limits at both sizes, mm. */
export interface FitChange {
  readonly cut: string;
  readonly class: string;
  readonly before: FitAt;
  readonly after: FitAt;
}

export interface FitAt {
  readonly size: number;
  readonly lower: number;
  readonly upper: number;
}

const sizedOf = (size: Size): readonly Sized[] => Object.values(size).filter((value): value is Sized => typeof value === 'object' && value !== null && 'purpose' in value);

const fitsOf = (part: Part): readonly { readonly key: string; readonly cut: string; readonly class: string; readonly at: FitAt }[] =>
  part.operations.flatMap(({ cuts }) =>
    cuts.flatMap((cut) =>
      cut.sizes.flatMap(sizedOf).flatMap(({ value, tolerance }, i) => (tolerance?.kind === 'fit' ? [{ key: `${cut.id} ${i}`, cut: cut.name, class: tolerance.class, at: { size: value, lower: tolerance.lower, upper: tolerance.upper } }] : [])),
    ),
  );

/** The fits of a part, whose classes are kept and whose limits are taken again at the new diameters (ISO 286). */
export function fitChanges(before: Part, after: Part): readonly FitChange[] {
  const old = new Map(fitsOf(before).map((fit) => [fit.key, fit]));
  return fitsOf(after).flatMap((fit) => {
    const was = old.get(fit.key);
    return was === undefined ? [] : [{ cut: fit.cut, class: fit.class, before: was.at, after: fit.at }];
  });
}
