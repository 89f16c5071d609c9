import type { Phrase } from '../../part/cut.js';
import type { Part } from '../../part/part.js';
import { measuresOf, type Measure } from '../../plan/rehearsal/measures.js';
import { formatAngle } from '../../units/format.js';
import type { PageSection } from '../pages/page-section.js';

/** The sheet for measured values: every size that has limits of its own, with a box for each hand, and one for its mate. */
export function measuredSections(part: Part, handed: boolean): readonly PageSection[] {
  const rows = part.operations.flatMap((operation) => measuresOf(part, operation).filter(({ general, gauge }) => !general || gauge !== undefined));
  const boxes = handed ? ['Right reads', 'Left reads'] : ['Reads'];
  return [
    {
      heading: 'Measured values',
      lines: [['Write down what was measured, not what should be: mating parts are made to these figures. Sizes with the general tolerance alone are left out.']],
      table: {
        writing: true,
        columns: [
          { heading: 'Op.', share: 0.07 },
          { heading: 'Measure', share: 0.28 },
          { heading: 'Limits', share: 0.19 },
          { heading: 'With', share: 0.14 },
          ...boxes.map((heading) => ({ heading, share: 0.2 / boxes.length })),
          { heading: 'Its mate reads', share: 0.12 },
        ],
        rows: rows.map((measure) => ({ operation: measure.operation, cells: [[String(measure.operation)], measure.what, limits(measure), [measure.instrument], ...boxes.map((): Phrase => []), []] })),
      },
    },
  ];
}

function limits({ measure, lower, upper, gauge }: Measure): Phrase {
  if (gauge !== undefined) return [gauge];
  return measure === 'angle' ? [`${formatAngle(lower)} to ${formatAngle(upper)}`] : [{ length: lower }, ' to ', { length: upper }];
}
