import { titleFields, type TitleField } from '../../templates/title-block.js';
import { missingCharacters } from '../lettering/index.js';
import { UserError } from '../units/user-error.js';

/** What the title block says. Each string is shown as it stands; an empty one leaves its box blank. */
export interface TitleFields {
  /** Name of the part, the largest lettering of the block. */
  readonly part: string;
  /** What the part belongs to, under its name. */
  readonly supplement?: string;
  /** Absent for a part that has no hand. */
  readonly hand?: 'R' | 'L';
  readonly documentNumber: string;
  readonly documentType: string;
  readonly owner: string;
  readonly creator: string;
  /** Absent: a blank box to sign in. */
  readonly approval?: string;
  /** As year-month-day; absent: a blank box to fill in. */
  readonly dateOfIssue?: string;
  readonly revision?: string;
  /** Number of this sheet, and of the sheets of the print. */
  readonly sheet: number;
  readonly sheets: number;
  readonly paper: string;
  /** Scale of most views, such as "2:1". */
  readonly scale: string;
  readonly projection: 'third' | 'first';
  /** Such as "mm" or "mm (inch)". */
  readonly units: string;
  readonly material: string;
  readonly stock: string;
  /** Such as "1 off" or "1 right, 1 left". */
  readonly quantity: string;
  readonly generalTolerance: string;
  readonly generalTexture: string;
  /** Finish and heat treatment. */
  readonly finish: string;
  readonly edges: string;
}

/**
 * Checks the fields at the door: mandatory ones filled (approval and date may be left to the pen), none longer than ISO 7200 allows, and
 * no character that can't be lettered. Throws UserError.
 */
export function checkTitleFields(fields: TitleFields): void {
  for (const [name, value] of Object.entries(fields) as [keyof typeof titleFields & keyof TitleFields, string | number][]) {
    const { caption, longest, mandatory }: TitleField = titleFields[name as keyof typeof titleFields] ?? { caption: name };
    const text = String(value);
    if (mandatory === true && text.trim() === '') throw new UserError(`the title block's field "${caption}" must not be empty`);
    if (longest !== undefined && [...text].length > longest) {
      throw new UserError(`the title block's field "${caption}" holds ${longest} characters at most, not ${[...text].length}: "${text}"`);
    }
    const [missing] = missingCharacters(text.replaceAll('\n', ''), 'normal');
    if (missing !== undefined) throw new UserError(`the title block's field "${caption}" has a character that can't be lettered: "${missing}"`);
  }
}
