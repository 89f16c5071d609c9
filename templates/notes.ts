/** Notes that stand on prints as they are. `{...}` stands for what the caller fills in. */
export const notes = {
  'units-mm': 'Dimensions in millimetres.',
  'units-inch': 'Dimensions in inches.',
  'units-mm-inch': 'Dimensions in millimetres, inches in brackets.',
  'units-inch-mm': 'Dimensions in inches, millimetres in brackets.',
  'edges': 'Break sharp edges {size}.',
  'manner': 'Drawn in the manner of ISO 128 and ISO 129; not checked against the standards themselves.',
  'print-true': 'Print at 100 %, and check the bar.',
  'reference': 'Sizes in brackets follow from the others: do not work to them.',
  'picture': 'Picture for understanding only: do not measure from it.',
  'do-not-scale': 'Work to the figures, not to the paper.',
  'opposite-hand': 'This sheet shows the {hand} hand. The other hand is its mirror image and has its own sheet; threads are right-hand on both.',
  'hand-marks': 'The features marked {mark} make the hand: check them before cutting.',
} as const satisfies Readonly<Record<string, string>>;

export type NoteId = keyof typeof notes;
