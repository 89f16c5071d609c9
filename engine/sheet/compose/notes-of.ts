import { cautions, type CautionId } from '../../../templates/cautions.js';
import { notes } from '../../../templates/notes.js';
import type { Part } from '../../part/part.js';
import { phraseText, type Speech } from '../say/texts.js';
import type { NoteGroup } from './notes-block.js';

/** The sentence of a caution, with figures filled in. Throws RangeError for an id that does not exist. */
export function cautionText(id: string): string {
  const text = (cautions as Readonly<Record<string, string>>)[id as CautionId];
  if (text === undefined) throw new RangeError(`there is no caution "${id}"`);
  return text;
}

/** The sign by which features that make the hand are marked. */
export const handMark = '▲';

export interface NoteFacts {
  readonly speech: Speech;
  readonly handed: boolean;
  readonly references: boolean;
  /** Names of what makes the hand, with the operation that cuts it. */
  readonly makers: readonly string[];
  /** Made once, as drawn: nothing is said of hands. */
  readonly asDrawn?: boolean;
}

/** What is written beside the views: units and ways of reading, the part's own notes, what makes the hand, cautions. */
export function notesOf(part: Part, facts: NoteFacts): readonly NoteGroup[] {
  const { speech } = facts;
  const unit = speech.unit === 'in' ? (speech.other ? 'units-inch-mm' : 'units-inch') : speech.other ? 'units-mm-inch' : 'units-mm';
  const hand = facts.handed
    ? [
        notes['opposite-hand'].replace('{hand}', part.hand),
        `${notes['hand-marks'].replace('{mark}', handMark)} They are: ${facts.makers.join('; ')}.`,
      ]
    : facts.asDrawn === true
      ? []
      : ['This part is not handed: its mirror image is the part itself, turned.'];
  return [
    {
      heading: 'Notes',
      paragraphs: [
        notes[unit],
        notes['do-not-scale'],
        ...(facts.references ? [notes['reference']] : []),
        ...part.notes.map((note) => phraseText(note, speech)),
        ...hand,
        notes['manner'],
      ],
    },
    { heading: 'Cautions', paragraphs: part.cautions.map(cautionText) },
  ];
}
