import { drillingLimits } from '../data/drilling-limits.js';
import type { Finding } from '../finding.js';
import type { Solid } from '../../solid/model.js';
import { acrossRound, commonPractice, figureOf, mm, type Check } from './context.js';
import { drillings, type Meeting } from './drillings.js';

/** Whether a drill breaks through on a slope, or into another hole, on its way. */
export const drillExit: Check = (context, state) =>
  drillings(context, state).flatMap(({ size, metal }) => {
    const diameter = size.diameter.value;
    const found = metal.flatMap((meeting) => exitOf(meeting, diameter, state.before) ?? []).sort((a, b) => b.unlike - a.unlike)[0];
    if (found === undefined) return [];
    const figures = { diameter: figureOf(diameter), unlike: figureOf(found.unlike), at: figureOf(found.at) };
    const name = found.cut === undefined ? '' : ` (${context.part.operations.flatMap(({ cuts }) => cuts).find(({ id }) => id === found.cut)?.name ?? found.cut})`;
    const finding: Finding = {
      check: 'break-through',
      operation: state.operation.number,
      gravity: found.unlike > drillingLimits.grabs * diameter ? 'warning' : 'remark',
      figures,
      sentence: found.round
        ? ['The drill ', acrossRound(diameter), ` breaks into a hollow with a round wall${name} `, mm(found.at), ' deep, one side ', mm(found.unlike), ' before the other: feed gently there, or it grabs; a plug in the hole holds it']
        : ['The drill ', acrossRound(diameter), ` breaks through on a slope or at an edge${name} `, mm(found.at), ' deep, one side ', mm(found.unlike), ' before the other: feed gently there, or back the place up'],
      source: commonPractice,
    };
    return [finding];
  });

interface Exit {
  /** Where the first of the rim leaves the metal, mm from the mouth. */
  readonly at: number;
  readonly unlike: number;
  readonly round: boolean;
  /** The cut that made the hollow. */
  readonly cut: string | undefined;
}

/** A hollow on one of the lines: from where to where, and the face at which it begins. */
interface Hollow {
  readonly line: number;
  readonly from: number;
  readonly to: number;
  readonly face: number;
}

/** The most uneven place at which the rim leaves metal on the way, if it is more uneven than is free. */
function exitOf({ centre, rim, end }: Meeting, diameter: number, { faces, surfaces, facetError }: Solid): Exit | undefined {
  const lines = [centre, ...rim].filter((spans) => spans.length > 0);
  const hollows = lines.flatMap((spans, line) => spans.flatMap(({ to, leaves }, i): readonly Hollow[] => (to > end - 1e-6 ? [] : [{ line, from: to, to: Math.min(end, spans[i + 1]?.from ?? Infinity), face: leaves }])));
  const exits = together(hollows).map((group): Exit => {
    const from = group.map((hollow) => hollow.from);
    const everywhere = new Set(group.map(({ line }) => line)).size === lines.length;
    const curved = group.find(({ face }) => surfaces[faces[face]!.surface]!.kind !== 'plane');
    const cut = faces[(curved ?? group[0]!).face]!.tag.cut;
    const longest = Math.max(...group.map((hollow) => hollow.to - hollow.from));
    return { at: Math.min(...from), unlike: everywhere ? Math.max(...from) - Math.min(...from) : Math.min(diameter, longest), round: curved !== undefined, cut: cut === 'stock' ? undefined : cut };
  });
  return exits.filter(({ unlike }) => unlike > drillingLimits.leaveUnlike * diameter + 2 * facetError).sort((a, b) => b.unlike - a.unlike)[0];
}

/** Hollows that lie beside one another, in groups. */
function together(hollows: readonly Hollow[]): readonly (readonly Hollow[])[] {
  const groups: { to: number; members: Hollow[] }[] = [];
  for (const hollow of [...hollows].sort((a, b) => a.from - b.from)) {
    const last = groups.at(-1);
    if (last !== undefined && hollow.from < last.to) {
      last.members.push(hollow);
      last.to = Math.max(last.to, hollow.to);
    } else groups.push({ to: hollow.to, members: [hollow] });
  }
  return groups.map(({ members }) => members);
}
