import { fitSteps, forceFits, forceFitSteps, slidingFits } from '../data/inch-fits.js';
import { deviationSteps, toleranceSteps } from '../data/iso-286.js';
import { isInchFit } from '../inch-fits.js';
import { standardTolerance, toleranceMicrometres } from '../iso-fits.js';
import { UserError } from '../../units/user-error.js';
import type { Table, TableRow } from './table.js';

const usual = ['H6', 'H7', 'H8', 'H9', 'H11', 'F8', 'G7', 'JS7', 'K7', 'N7', 'P7', 'd9', 'e8', 'f7', 'g6', 'h5', 'h6', 'h7', 'h9', 'h11', 'js6', 'k6', 'm6', 'n6', 'p6', 'r6', 's6'];

/** The deviations of a class at every step of size where it is defined; steps with equal limits are joined. */
function classRows(name: string): readonly TableRow[] {
  const rows: TableRow[] = [];
  deviationSteps.forEach((upTo, index) => {
    try {
      const { upper, lower } = toleranceMicrometres(name, upTo);
      const over = deviationSteps[index - 1] ?? 0;
      const before = rows.at(-1);
      if (before !== undefined && before['upTo'] === over && before['upperMicrometres'] === upper && before['lowerMicrometres'] === lower && !toleranceSteps.includes(over)) {
        rows[rows.length - 1] = { ...before, upTo };
        return;
      }
      rows.push({ name, over, upTo, upperMicrometres: upper, lowerMicrometres: lower, source: 'ISO 286-2:2010' });
    } catch (fault) {
      if (!(fault instanceof UserError) || !fault.message.includes('not defined')) throw fault;
    }
  });
  return rows;
}

const gradeRows = (grade: number): readonly TableRow[] =>
  toleranceSteps.map((upTo, index) => ({ name: `IT${grade}`, over: toleranceSteps[index - 1] ?? 0, upTo, toleranceMicrometres: standardTolerance(grade, upTo), source: 'ISO 286-1:2010 Table 1' }));

function inchRows(text: string): readonly TableRow[] {
  const name = text.trim().toUpperCase().replace(/\s+/g, '');
  const table = slidingFits[name] ?? forceFits[name];
  if (table === undefined) throw new UserError(`fit "${text.trim()}" is not in the table: allowed are ${[...Object.keys(slidingFits), ...Object.keys(forceFits)].join(', ')}.`);
  const steps = forceFits[name] === undefined ? fitSteps : forceFitSteps;
  const mm = (inches: number): number => Number((inches * 25.4).toFixed(6));
  return table.flatMap(([hole, upper, lower], index) =>
    Number.isNaN(hole)
      ? []
      : [{ name, over: mm(steps[index - 1] ?? 0), upTo: mm(steps[index] ?? 0), holeUpper: mm(hole / 1000), holeLower: 0, shaftUpper: mm(upper / 1000), shaftLower: mm(lower / 1000), source: 'ANSI B4.1-1967' }],
  );
}

function rowsOf(name: string): readonly TableRow[] {
  const grade = /^IT\s*(\d+)$/i.exec(name.trim())?.[1];
  if (grade !== undefined) return gradeRows(Number(grade));
  return isInchFit(name) ? inchRows(name) : name.split('/').flatMap((part) => classRows(part.trim()));
}

const rows = [...usual, ...Object.keys(slidingFits), ...Object.keys(forceFits)].flatMap(rowsOf);

export const fitTable: Table = {
  name: 'fits',
  summary: 'limits of a tolerance class (H7, g6), grade (IT7) or fit (H7/g6, RC4) at each step of size',
  rows,
  find: (filter) => ({ kind: 'rows', rows: filter === undefined || filter.trim() === '' ? rows : rowsOf(filter) }),
};
