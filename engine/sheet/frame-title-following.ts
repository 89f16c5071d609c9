import { titleBlockWidth } from '../../templates/title-block.js';
import { cellWidth, handCell, nameCell, textCell, type TitleCell } from './frame-title-cells.js';
import type { TitleFields } from './frame-title-fields.js';
import { sideBySide, stacked } from './frame-title-groups.js';

const handWidth = 17;
/** Room to sign in and to write a date in, and for `10 of 10`, so that the lines stand alike on all sheets. */
const least = { approval: 19, dateOfIssue: 29, sheet: 22 } as const;

type PlainField = 'documentType' | 'dateOfIssue' | 'owner' | 'creator' | 'revision' | 'approval';

/**
 * The low block of a following sheet: hand, name, and the fields that ISO 7200 asks for on every sheet, in two rows. Boxes are as wide as
 * their words; the name has what is left of the upper row, the box to sign in what is left of the lower.
 */
export function followingBlock(fields: TitleFields): TitleCell {
  const hand = fields.hand === undefined ? [] : [handCell(handWidth, fields.hand)];
  const across = titleBlockWidth - hand.length * handWidth;
  const sheet = `${fields.sheet} of ${fields.sheets}`;
  const ends = [
    textCell('units', cellWidth('units', fields.units), fields.units),
    textCell('documentNumber', cellWidth('documentNumber', fields.documentNumber), fields.documentNumber),
    textCell('sheet', Math.max(least.sheet, cellWidth('sheet', sheet)), sheet),
  ];
  const rest = across - ends.reduce((total, { width }) => total + width, 0);
  return sideBySide([...hand, stacked([sideBySide([nameCell(rest, fields.part, fields.supplement ?? ''), ...ends]), lowerRow(fields, across)])]);
}

function lowerRow(fields: TitleFields, across: number): TitleCell {
  const says = (name: PlainField): string => fields[name] ?? '';
  const names: readonly PlainField[] = ['documentType', 'dateOfIssue', 'owner', 'creator', 'revision', 'approval'];
  const narrow = names.map((name) => Math.max(cellWidth(name, ''), name === 'approval' || name === 'dateOfIssue' ? least[name] : 0));
  const wanted = names.map((name, index) => Math.max(narrow[index]!, cellWidth(name, says(name))));
  const sum = (widths: readonly number[]): number => widths.reduce((total, width) => total + width, 0);
  const spare = across - sum(wanted);
  // Where the words are too long to stand side by side, each box gives way in the measure of what it wants beyond its caption.
  const share = spare >= 0 ? 1 : (across - sum(narrow)) / (sum(wanted) - sum(narrow));
  const widths = wanted.map((width, index) => narrow[index]! + share * (width - narrow[index]!));
  return sideBySide(names.map((name, index) => textCell(name, widths[index]! + (name === 'approval' ? Math.max(0, spare) : 0), says(name))));
}
