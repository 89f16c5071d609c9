import { nearestClause } from '../../units/nearest-name.js';
import { UserError } from '../../units/user-error.js';
import { drillTable } from './drills.js';
import { fitTable } from './fits.js';
import { gaugeTable } from './gauges.js';
import { materialTable } from './materials.js';
import { screwTable } from './screws.js';
import { stockTable } from './stock.js';
import type { Table } from './table.js';
import { temperingTable } from './tempering.js';
import { threadTable } from './threads.js';
import { centreDrillTable, reamerTable } from './tools.js';

export type { Table, TableAnswer, TableRow } from './table.js';

export const tables: readonly Table[] = [threadTable, drillTable, reamerTable, centreDrillTable, fitTable, materialTable, stockTable, gaugeTable, screwTable, temperingTable];

/** @throws UserError for a name that is no table. */
export function findTable(name: string): Table {
  const table = tables.find((candidate) => candidate.name === name.trim().toLowerCase());
  if (table !== undefined) return table;
  const names = tables.map((candidate) => candidate.name);
  throw new UserError(`there is no table "${name.trim()}": choose ${names.join(', ')}${nearestClause(name, names)}.`);
}
