import { tapLeads } from '../../trade/sums/blind-hole.js';
import type { HoleSize, InternalThreadSize, TappingSize } from '../../part/cut.js';
import { dot, subtract, unit } from '../../geometry/vector.js';
import type { Finding } from '../finding.js';
import { keyOf } from '../hole-places.js';
import { commonPractice, figureOf, mm, plain, type Check, type OrderContext } from './context.js';

/** Pitches of room for chips below a tap: common practice. */
const chips = 1;

/** The lead of the last tap that goes down, by the words of the cutter, in pitches. A plug tap is a bottoming one here. */
function leadOf(words: string): { readonly name: string; readonly pitches: number } {
  if (/bottom|plug/i.test(words)) return { name: 'bottoming', pitches: tapLeads['bottoming']! };
  if (/taper/i.test(words) && !/second/i.test(words)) return { name: 'taper', pitches: tapLeads['taper']! };
  if (/second/i.test(words)) return { name: 'second', pitches: tapLeads['second']! };
  return { name: 'bottoming', pitches: tapLeads['bottoming']! };
}

/** Holes at the places of a thread that were drilled before it, or in the same operation. */
const holesUnder = ({ part }: OrderContext, number: number, tapping: TappingSize): readonly HoleSize[] => {
  const places = new Set(tapping.points.map(keyOf));
  return part.operations
    .filter((operation) => operation.number <= number)
    .flatMap(({ cuts }) => cuts.flatMap(({ sizes }) => sizes))
    .flatMap((size) => (size.kind === 'hole' && size.points.some((point) => places.has(keyOf(point))) ? [size] : []));
};

/** From the end of a thread in a bore to the bottom of that bore, mm; undefined where no such bore was made before. */
function roomBeyond({ part }: OrderContext, number: number, size: InternalThreadSize): number | undefined {
  const along = unit(subtract(size.to, size.from));
  const bores = part.operations
    .filter((operation) => operation.number <= number)
    .flatMap(({ cuts }) => cuts.flatMap(({ sizes }) => sizes))
    .flatMap((other) => (other.kind === 'diameter' && other.internal && Math.abs(other.diameter.value - size.core) < 1e-6 ? [Math.max(...[other.from, other.to].map((end) => dot(subtract(end, size.to), along)))] : []));
  return bores.length === 0 ? undefined : Math.max(...bores);
}

/** Whether the tap of a thread against a shoulder has its lead's length to run out in; chips leave by the bore beyond. */
const tapToShoulder: Check = (context, { operation }) =>
  operation.cuts.flatMap(({ sizes, name }) =>
    sizes.flatMap((size): readonly Finding[] => {
      if (size.kind !== 'internal-thread') return [];
      const { designation, pitch } = size.thread;
      const finding = (gravity: Finding['gravity'], figures: Finding['figures'], ...sentence: Finding['sentence']): Finding => ({ check: 'tap depth', operation: operation.number, gravity, figures, sentence, source: `run-out of the tool before a shoulder; leads are ${commonPractice}` });
      const room = roomBeyond(context, operation.number, size);
      if (room === undefined) return [finding('fatal', { thread: designation }, `There is no bore yet for the thread ${designation} (${name})`)];
      const lead = size.method === 'tap' ? leadOf(operation.cutter.name) : { name: 'screw-cutting tool', pitches: 1 };
      if (room >= lead.pitches * pitch - 1e-6) return [];
      const figures = { thread: designation, room: figureOf(room), wanted: figureOf(lead.pitches * pitch), pitches: figureOf(room / pitch) };
      const tool = size.method === 'tap' ? `the lead of a ${lead.name} tap` : 'the tool';
      return [finding('fatal', figures, `${designation} ends `, mm(room), ` before the shoulder, ${plain(room / pitch)} pitches, and ${tool} wants ${plain(lead.pitches)}: it jams against the shoulder; make the groove wider or the thread shorter`)];
    }),
  );

/** Whether a blind hole is deep enough for its thread, the lead of the tap and chips; whether it is there at all. */
const tapInHole: Check = (context, { operation }) =>
  operation.cuts.flatMap(({ sizes, name }) =>
    sizes.flatMap((size): readonly Finding[] => {
      if (size.kind !== 'tapping') return [];
      const finding = (gravity: Finding['gravity'], figures: Finding['figures'], ...sentence: Finding['sentence']): Finding => ({ check: 'tap depth', operation: operation.number, gravity, figures, sentence, source: `full thread + lead of the tap + room for chips; leads are ${commonPractice}` });
      const holes = holesUnder(context, operation.number, size);
      const { designation, pitch } = size.thread;
      if (holes.length === 0) return [finding('fatal', { thread: designation }, `There is no hole yet to tap ${designation} (${name})`)];
      const hole = holes[0]!;
      if (hole.diameter.value > size.thread.major - 0.05 * pitch) return [finding('fatal', { thread: designation, drill: figureOf(hole.diameter.value) }, `The hole leaves no thread for ${designation}: it is `, { ...mm(hole.diameter.value), sign: 'diameter' })];
      if (hole.depth === undefined) return [];
      if (size.depth === undefined) return [finding('fatal', { thread: designation, drilled: figureOf(hole.depth.value) }, `${designation} is to be tapped right through a hole that is blind, `, mm(hole.depth.value), ' deep')];
      const room = hole.depth.value - size.depth.value;
      const lead = leadOf(operation.cutter.name);
      const wanted = (lead.pitches + chips) * pitch;
      const figures = { thread: designation, threadDepth: figureOf(size.depth.value), drilled: figureOf(hole.depth.value), room: figureOf(room), wanted: figureOf(wanted), pitches: figureOf(room / pitch) };
      const says = [`${designation} is wanted `, mm(size.depth.value), ' deep and the hole is drilled ', mm(hole.depth.value), `: ${plain(room / pitch)} pitches are left for the tap`] as const;
      if (room < lead.pitches * pitch - 1e-6) return [finding('fatal', figures, ...says, `, and the lead of a ${lead.name} tap alone takes ${plain(lead.pitches)}: it jams on the bottom and breaks`)];
      return room < wanted - 1e-6 ? [finding('warning', figures, ...says, `, and ${plain(lead.pitches + chips)} are wanted with room for chips: back the tap out often`)] : [];
    }),
  );

/** Whether each thread that is cut inside has the depth that its tap wants below it. */
export const tapDepth: Check = (context, state) => [...tapInHole(context, state), ...tapToShoulder(context, state)];
