import type { Part } from '../part/part.js';
import { UserError } from '../units/user-error.js';
import { formsToSolid, stockForms, type SolidOptions } from './build.js';
import { piecesOf } from './connected.js';
import type { Kernel } from './kernel.js';
import { volumeOf } from './measure.js';
import type { Solid } from './model.js';
import type { TaggedForm } from './tagged-form.js';

/** Facets in a full turn where only the presence of a volume is asked. */
const COARSE = 16;

/** Less of a volume than this is a matter of rounding, mm3 for each mm3. */
const NOTHING = 1e-9;

/**
 * The solid of a part, of which it is sure that it can be made: every form is a proper body, something is left, in one
 * piece, and every cut takes something away when its turn comes.
 * @param made the solid, where it was made already.
 * @throws UserError that names the cut or the stock where it is not so.
 */
export function soundSolid(kernel: Kernel, part: Part, options: SolidOptions = {}, made?: Solid): Solid {
  const cuts = part.operations.flatMap(({ cuts }) => cuts.map(({ id, forms }) => forms.map((form): TaggedForm => ({ cut: id, form }))));
  const refuse = (what: string): never => {
    throw new UserError(`the ${part.name} cannot be made: ${what}`);
  };
  const after = (count: number): Solid => formsToSolid(kernel, stockForms(part), cuts.slice(0, count).flat(), { segments: COARSE });
  let solid: Solid;
  try {
    solid = made ?? formsToSolid(kernel, stockForms(part), cuts.flat(), options);
  } catch (error) {
    // Only now is it worth the time to find out which form it is.
    for (const forms of [stockForms(part), ...cuts]) {
      const fault = faultOf(kernel, forms);
      if (fault !== undefined) return refuse(`${forms[0]?.cut === 'stock' ? 'the stock' : `the cut "${forms[0]?.cut ?? ''}"`} has no sound shape, for ${fault}`);
    }
    throw error;
  }
  if (solid.triangles.length === 0) {
    const last = cuts.findIndex((_, i) => after(i + 1).triangles.length === 0);
    return refuse(`nothing is left of the stock after the cut "${cuts[last]?.[0]?.cut ?? ''}"`);
  }
  const pieces = piecesOf(solid);
  if (pieces > 1) {
    const last = cuts.findIndex((_, i) => piecesOf(after(i + 1)) > 1);
    return refuse(`it falls into ${String(pieces)} pieces after the cut "${cuts[last]?.[0]?.cut ?? cuts.at(-1)?.[0]?.cut ?? ''}"`);
  }
  const left = new Set(solid.faces.map(({ tag }) => tag.cut));
  cuts.forEach((forms, i) => {
    const [first] = forms;
    if (first === undefined || left.has(first.cut)) return;
    const before = volumeOf(after(i));
    if (before - volumeOf(after(i + 1)) <= NOTHING * before) refuse(`the cut "${first.cut}" takes nothing away: it lies outside the material or where it is gone already`);
  });
  return solid;
}

/** Why a body cannot be made of some forms; undefined where it can. */
function faultOf(kernel: Kernel, forms: readonly TaggedForm[]): string | undefined {
  try {
    for (const form of forms.filter((each) => each.form.kind !== 'half-space')) formsToSolid(kernel, [form], [], { segments: COARSE });
    return undefined;
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    if (error instanceof Error && error.name === 'ManifoldError') return 'its faces do not close round it';
    throw error;
  }
}
