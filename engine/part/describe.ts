import type { LengthUnit } from '../units/length.js';
import { formatLength } from '../units/format.js';
import { roundedText } from '../units/rounding.js';
import type { PartGenerator } from './generator.js';
import { limitsOf } from './limits.js';
import type { Parameter } from './parameters.js';
import type { Relation, Side } from './relation.js';
import { resolveValues } from './resolve.js';
import { unitSpoken } from './unit-spoken.js';

/** A parameter in words, for a table. */
export interface ParameterDescription {
  readonly name: string;
  readonly kind: string;
  readonly label: string;
  readonly default: string;
  /** "1/8 in to 1/2 in", or the words of a choice. */
  readonly allowed: string;
}

/** A part's parameters in the order of its declaration. */
export const describeParameters = (generator: PartGenerator): readonly ParameterDescription[] =>
  Object.entries(generator.parameters).map(([name, parameter]) => ({
    name,
    kind: parameter.kind === 'stock' ? `${parameter.form} stock` : parameter.kind,
    label: parameter.label,
    default: parameter.kind === 'angle' ? `${String(parameter.default)}°` : String(parameter.default),
    allowed: allowedWords(parameter),
  }));

/**
 * What must hold between the parameters, each with both sides' values at the defaults: "the pin clears the pad: gap
 * (.010 in) >= clearance (.005 in)".
 * @param units undefined speaks in the part's own.
 */
export function describeRelations(generator: PartGenerator, units: LengthUnit | undefined): readonly string[] {
  const unit = units ?? unitSpoken(generator.parameters, {});
  return generator
    .relations(resolveValues(generator, {}, undefined))
    .map((relation) => `${relation.says}: ${sideWords(relation.left, relation, unit)} ${relation.is} ${sideWords(relation.right, relation, unit)}`);
}

function allowedWords(parameter: Parameter): string {
  if (parameter.kind === 'choice') return parameter.options.join(', ');
  const limits = limitsOf(parameter);
  return limits === undefined ? '' : `${limits.least.text} to ${limits.greatest.text}`;
}

function sideWords(side: Side, { measure }: Relation, unit: LengthUnit): string {
  if (measure === 'length') return `${side.text} (${formatLength(side.value, unit)} ${unit})`;
  return `${side.text} (${roundedText(side.value, measure === 'angle' ? 2 : 0).replace(/\.0+$/, '')}${measure === 'angle' ? '°' : ''})`;
}
