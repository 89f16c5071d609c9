import { FULL, type Carrier, type Member } from './carriers.js';
import { cross } from './crossings.js';
import { indexOf, itemsOf, type Item } from './items.js';
import { coordinateAt } from './shadow.js';

/** How far beyond the end of an outline a crossing still counts, mm. */
const BEYOND = 1e-5;

/** An outline must stand before a curve by this much less than nothing to hide it, mm. */
const DEPTH = 1e-3;

/** Puts the places at which a carrier is crossed by outlines into the list. */
export type Breaker = (carrier: Carrier, breaks: number[]) => void;

/** Finds for any carrier the places where the outlines of the given carriers cross it before one of its members. */
export function breakerOf(carriers: readonly Carrier[]): Breaker {
  const outlines = carriers.flatMap((carrier) => itemsOf(carrier, (outline) => outline));
  const index = indexOf(outlines);
  return (carrier, breaks) => {
    if (!index) return;
    for (const item of itemsOf(carrier, () => true)) {
      const [x0, y0, x1, y1] = item.box;
      for (const i of index.search(x0 - BEYOND, y0 - BEYOND, x1 + BEYOND, y1 + BEYOND).sort((a, b) => a - b)) {
        const outline = outlines[i]!;
        if (outline.near > item.far + DEPTH || (outline.carrier === carrier && outline.span === item.span)) continue;
        cross(outline.carrier, outline.span, carrier, item.span, (s, t) => {
          if (!holds(outline, s) || !holds(item, t)) return;
          if (nearestDepth(outline.carrier, s) < farthestDepth(carrier, t) + DEPTH) breaks.push(t);
        });
      }
    }
  };
}

/** How much of the carrier's parameter goes with one mm. */
const perMillimetre = (carrier: Carrier): number =>
  carrier.kind === 'line' ? 1 : carrier.kind === 'ellipse' ? 1 / Math.sqrt(carrier.bx ** 2 + carrier.by ** 2) : 0.1;

function holds({ carrier, from, to }: Item, s: number): boolean {
  const beyond = BEYOND * perMillimetre(carrier);
  if (s >= from - beyond && s <= to + beyond) return true;
  return carrier.kind === 'ellipse' && s + FULL <= to + beyond;
}

/** Depth of the nearest member that makes an outline at s (within the tolerance of its ends). */
function nearestDepth(carrier: Carrier, s: number): number {
  let best = Infinity;
  for (const member of carrier.members) {
    if (member.strand.outline) best = Math.min(best, depthAt(carrier, member, s, Infinity));
  }
  return best;
}

function farthestDepth(carrier: Carrier, s: number): number {
  let best = -Infinity;
  for (const member of carrier.members) best = Math.max(best, depthAt(carrier, member, s, -Infinity));
  return best;
}

/** Depth of a member at s; `none` where it does not reach. */
function depthAt(carrier: Carrier, { strand, from, to, toParameter }: Member, s: number, none: number): number {
  const beyond = BEYOND * perMillimetre(carrier);
  const turned = carrier.kind === 'ellipse' && s < from - beyond ? s + FULL : s;
  return turned >= from - beyond && turned <= to + beyond ? coordinateAt(strand.shadow, toParameter(turned), 2) : none;
}
