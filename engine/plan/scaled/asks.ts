import type { BarToBuy } from '../../part/bar-to-buy.js';
import type { ScaleLine } from '../../part/scaling/index.js';
import { formatLength } from '../../units/format.js';
import type { LengthUnit } from '../../units/length.js';
import type { StrengthRow } from '../strength/compare.js';
import { signed } from './in-words.js';
import type { MachineChange } from './machines.js';

/** Something that a person must decide: what it is about, and what is asked. */
export interface Ask {
  readonly about: string;
  readonly ask: string;
}

/** All that is left to a person: choices of sizes, checks that fail, machines that are too small, bar that is not sold. */
export function asksOf(lines: readonly ScaleLine[], strength: readonly StrengthRow[], machines: readonly MachineChange[], buy: BarToBuy, unit: LengthUnit): readonly Ask[] {
  const length = (mm: number): string => formatLength(mm, unit, unit === 'in' ? 3 : 1);
  return [
    ...strength.flatMap((row) => (row.verdict === 'holds' ? [] : [{ about: row.what, ask: strengthAsk(row, unit) }])),
    ...lines.flatMap(({ parameter, decision }) => (decision === undefined ? [] : [{ about: parameter, ask: decision }])),
    ...machines.filter(({ fits }) => !fits).map(({ setUp, machine, what, needs, has }) => ({ about: `set-up ${setUp}`, ask: what.startsWith('power') ? `needs ${needs.toFixed(0)} W of the ${machine}, which has ${has.toFixed(0)}: lighter cuts, which take longer, or another machine` : `needs ${what} ${length(needs)} ${unit} of the ${machine}, which has ${length(has)}: another machine, or another way` })),
    ...(buy.sold === undefined ? [{ about: 'bar', ask: `${section(buy, length)} ${unit}: no bar in the lists holds the part; cut it from plate, or ask what can be got` }] : []),
  ];
}

const section = (buy: BarToBuy, length: (mm: number) => string): string => buy.section.map(length).join(' x ');
const figure = (value: number): string => String(Number(value.toPrecision(3)));

function strengthAsk({ verdict, proposal, before, after, exact, asked }: StrengthRow, unit: LengthUnit): string {
  const was = before.safety < asked ? `, as it already did before (${figure(before.safety)} times)` : '';
  const state = verdict === 'fails' ? `holds ${figure(after.safety)} times where ${figure(asked)} is asked${was}` : `holds ${figure(after.safety)} times, where exact scaling would leave ${figure(exact.safety)}: sizes that can be bought took it`;
  if (proposal === undefined) return `${state}; no one size mends it alone`;
  const to = proposal.name ?? `${formatLength(proposal.to, unit, unit === 'in' ? 4 : 3)} ${unit}`;
  const both = proposal.mate === undefined ? '' : `, in both parts of ${proposal.mate},`;
  return `${state}; ${proposal.parameter} ${to}${both} would give ${figure(proposal.safety)} times, and look ${signed(proposal.looks, 1)} % against exact scaling`;
}
