import type { Part } from '../../part/part.js';
import type { Finding } from '../../plan/finding.js';
import type { ShopPlan } from '../../plan/plan.js';
import { countingSentences } from '../../plan/set-up-plan.js';
import type { SettingBlock } from '../../plan/setting.js';
import { noteStrips, type Strip } from '../operations/strips.js';
import { titleOf } from '../compose/title.js';
import type { Paper } from '../../../templates/paper.js';
import type { Speech } from '../say/texts.js';
import { legendPiece } from './legend.js';

/** What stands before the operations: the part in a few words, what its checking found, how to read pictures and figures, and what to lay out. */
export function headStrips(part: Part, plan: ShopPlan, findings: readonly Finding[], speech: Speech, facts: { readonly handed: boolean; readonly paper: Paper }, width: number): readonly { readonly strips: readonly Strip[]; readonly continued: readonly Strip[] }[] {
  const { stock, material, quantity } = titleOf(part, speech, { ...facts, scale: 'none', angle: 'third' });
  const name = facts.handed ? `${part.title}, ${part.hand} hand` : part.title;
  const counts = (['fatal', 'warning', 'remark'] as const).map((gravity) => findings.filter((finding) => finding.gravity === gravity).length);
  const found = `Checked operation by operation: ${counts[0]!} fatal, ${counts[1]!} to mind, ${counts[2]!} good to know; each stands with its operation.`;
  const legend = legendPiece(width);
  const group = (strips: readonly Strip[]) => ({ strips, continued: [] });
  return [
    group(noteStrips(`${name}: ${part.operations.length} operations in ${plan.runs.length} set-ups`, [{ kind: 'lines', lines: [`Stock: ${stock}, ${material}; ${quantity}.`, found] }], width, true)),
    group([...noteStrips('The pictures', [], width, true), { ...legend, withNext: false }]),
    group(noteStrips('How the settings are counted', [{ kind: 'lines', lines: [`Machines: ${plan.machines}.`, ...countingOf(plan), ...countingSentences(plan.runs.flatMap(({ counting }) => counting ?? []), 'operation')] }], width, true)),
    group(noteStrips('Cutters to lay out', [cuttersBlock(plan)], width, false)),
  ];
}

/** How each machine counts, said once. */
const countingOf = (plan: ShopPlan): readonly string[] => [...new Set(plan.runs.flatMap(({ setUp, counting }) => (counting === undefined ? [] : [`On the ${setUp.machine}: ${counting.short.charAt(0).toLowerCase()}${counting.short.slice(1)}`])))];

/** Every cutter once, with the operations that use it. */
function cuttersBlock(plan: ShopPlan): SettingBlock {
  const uses = new Map<string, number[]>();
  for (const { number, cutters } of plan.runs.flatMap(({ operations }) => operations)) for (const { name } of cutters) uses.set(name, [...(uses.get(name) ?? []), number]);
  return { kind: 'table', head: ['Cutter', 'Operations'], rows: [...uses].map(([name, numbers]) => [name, [...new Set(numbers)].join(', ')]), free: false };
}

/** What stands after the operations: what the shop lacks. */
export function lackStrips({ toGet, compared }: ShopPlan, width: number): readonly Strip[] {
  if (!compared) return [];
  const lines = toGet.length === 0 ? ['Nothing: all that the shop file lists is enough for this part.'] : toGet.map((lack) => `${lack.toGet}: ${lack.instead}.`);
  return noteStrips('To get, or to do without', [{ kind: 'lines', lines }], width, false);
}
