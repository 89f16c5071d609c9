import { z } from 'zod';
import { UserError } from '../units/user-error.js';
import { issueWords } from './issue-words.js';
import type { Part } from './part.js';

const text = z.string().min(1);
const list = z.array(z.unknown());
const direction = z.enum(['+x', '-x', '+y', '-y', '+z', '-z']);

/** What the rest of the program counts on; the vocabulary of the author makes what lies deeper. */
const shape = z.looseObject({
  name: text,
  title: text,
  engine: text,
  units: z.enum(['in', 'mm']),
  quantity: z.number().int().min(1),
  material: z.looseObject({ name: text }),
  stock: z.looseObject({ shape: z.enum(['round', 'rectangular', 'hexagon']), section: list.min(1), forms: list.min(1), faces: z.looseObject({}) }),
  stations: z.array(z.looseObject({ id: text, axis: z.enum(['x', 'y', 'z']), name: text, placing: z.looseObject({ kind: text }) })),
  setUps: z.array(z.looseObject({ id: text, machine: z.enum(['lathe', 'mill', 'drill', 'bench']), holding: text, zero: list })),
  operations: z
    .array(
      z.looseObject({
        number: z.number().int(),
        title: text,
        setUp: text,
        cutter: z.looseObject({ name: text }),
        cuts: z.array(z.looseObject({ id: text, name: text, forms: list, sizes: list, stations: list, instruction: list })),
      }),
    )
    .min(1),
  notes: list,
  cautions: z.array(text),
  attitude: z.looseObject({ kind: z.enum(['turned', 'milled']), front: direction, up: direction }),
  handAxis: z.enum(['x', 'y', 'z']),
  hand: z.enum(['right', 'left']),
  texture: z.number().positive(),
});

/**
 * What a user's own `build` gave, checked to be a part that the program can work on.
 * @param file names the module in the sentence of an error.
 * @throws UserError for the first thing that is wrong: a field missing or of the wrong kind, a number that is none, a set-up,
 * station or cut that is named twice or not there.
 */
export function checkPart(candidate: unknown, file: string): Part {
  const refuse = (what: string): never => {
    throw new UserError(`${file}: build gives no sound part: ${what}.`);
  };
  const issue = shape.safeParse(candidate).error?.issues[0];
  if (issue !== undefined) return refuse(issueWords(issue, candidate, 'the part'));
  const part = candidate as Part;
  const odd = placeOfOddNumber(part, 'the part');
  if (odd !== undefined) return refuse(`${odd} is not a number`);
  const cuts = part.operations.flatMap((operation) => operation.cuts);
  const lists = { 'set-up': part.setUps.map(({ id }) => id), station: part.stations.map(({ id }) => id), cut: cuts.map(({ id }) => id) };
  for (const [what, ids] of Object.entries(lists)) {
    const twice = ids.find((id, index) => ids.indexOf(id) !== index);
    if (twice !== undefined) return refuse(`the ${what} "${twice}" stands twice`);
  }
  for (const { number, setUp } of part.operations) {
    if (!lists['set-up'].includes(setUp)) return refuse(`operation ${String(number)} is in the set-up "${setUp}", which is not there`);
  }
  for (const { id, stations } of cuts) {
    const lost = stations.find((station) => !lists.station.includes(station));
    if (lost !== undefined) return refuse(`the cut "${id}" stands on the station "${lost}", which is not there`);
  }
  return part;
}

/** Where in plain data a number is not finite: "stations.2.value"; undefined where all are sound. */
function placeOfOddNumber(data: unknown, place: string): string | undefined {
  if (typeof data === 'number') return Number.isFinite(data) ? undefined : place;
  if (typeof data !== 'object' || data === null) return undefined;
  for (const [key, value] of Object.entries(data)) {
    const odd = placeOfOddNumber(value, place === 'the part' ? key : `${place}.${key}`);
    if (odd !== undefined) return odd;
  }
  return undefined;
}
