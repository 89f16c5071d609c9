import type { Paper } from '../../../templates/paper.js';
import type { Part } from '../../part/part.js';
import type { TitleFields } from '../frame-title-fields.js';
import { phraseText, sizeText, type Speech } from '../say/texts.js';

/** Leg or radius to which sharp edges are broken, mm, by unit: no more than is felt as no longer sharp (common practice). */
const edgeBreak = { in: 0.254, mm: 0.2 } as const;

/** Characters of a name that its field holds on one line, with the hand after it. */
const longestName = 13;

/** A name without its first hyphens, as far as that makes it short enough; else cut off. */
function shortened(name: string, room: number): string {
  if (name.replaceAll('-', '').length > room) return name.slice(0, room).replace(/-$/, '');
  let short = name;
  while (short.length > room && short.includes('-')) short = short.replace('-', '');
  return short.slice(0, room);
}

/** The name of a part as its document number has it, with what tells it from its kin: a test piece is not the part. */
function documentName({ name, kin }: Part): string {
  const end = kin === undefined ? '' : `-${kin.mark}`;
  return `${shortened((kin?.of ?? name).toUpperCase(), longestName - end.length)}${end}`;
}

/** What the title block says of a part, but for the sheet's own number and type. */
export function titleOf(
  part: Part,
  speech: Speech,
  facts: { readonly handed: boolean; readonly scale: string; readonly paper: Paper; readonly angle: 'third' | 'first' },
): Omit<TitleFields, 'sheet' | 'sheets' | 'documentType'> {
  const suffix = facts.handed ? (part.hand === 'right' ? '-R' : '-L') : '';
  const name = documentName(part);
  const length = (value: number): string => sizeText({ value, purpose: 'size' }, { ...speech, other: false });
  const section =
    part.stock.shape === 'round'
      ? `⌀${length(part.stock.section[0]!)} round`
      : part.stock.shape === 'hexagon'
        ? `${length(part.stock.section[0]!)} A/F hexagon`
        : `${part.stock.section.map(length).join(' x ')} bar`;
  return {
    part: part.title.slice(0, 25),
    supplement: part.engine.slice(0, 25),
    ...(facts.handed ? { hand: part.hand === 'right' ? 'R' : 'L' } : {}),
    documentNumber: `${name}${suffix}`,
    owner: 'Own workshop',
    creator: 'trialpiece',
    paper: facts.paper.name,
    scale: facts.scale,
    projection: facts.angle,
    units: speech.unit === 'in' ? (speech.other ? 'inch [mm]' : 'inch') : speech.other ? 'mm [inch]' : 'mm',
    material: part.material.name,
    stock: `${section}, ${length(part.stock.length)} long`,
    quantity: facts.handed ? `${part.quantity} right, ${part.quantity} left` : `${part.quantity} off`,
    generalTolerance: 'ISO 2768-m',
    generalTexture: `Ra ${part.texture}`,
    finish: part.material.treatment === undefined ? 'bright, oiled' : phraseText(part.material.treatment, speech),
    edges: `break ${length(edgeBreak[speech.unit])}`,
  };
}
