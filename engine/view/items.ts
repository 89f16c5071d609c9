import Flatbush from 'flatbush';
import { FULL, type Carrier } from './carriers.js';
import { coordinateAt } from './shadow.js';

/** A stretch of a carrier that is covered by members of one sort, with its box in the plane. */
export interface Item {
  readonly carrier: Carrier;
  /** The Bézier that it lies in, for a spline. */
  readonly span: number;
  readonly from: number;
  readonly to: number;
  /** Least and greatest depth of the members. */
  readonly near: number;
  readonly far: number;
  readonly box: readonly [number, number, number, number];
}

/** The stretches of a carrier on which there is a member for which `wanted` holds; overlapping ones joined. */
export function itemsOf(carrier: Carrier, wanted: (outline: boolean, covered: boolean) => boolean): Item[] {
  const members = carrier.members.filter(({ strand }) => wanted(strand.outline, strand.covered)).sort((a, b) => a.from - b.from);
  const items: Item[] = [];
  let open: { from: number; to: number; near: number; far: number } | undefined;
  const close = (): void => {
    if (open) items.push(...boxed(carrier, open.from, open.to, open.near, open.far));
  };
  for (const { strand: { shadow, low, high }, from, to } of members) {
    const [near, far] = depths(shadow, low, high);
    if (open && from <= open.to + 1e-6) {
      open = { from: open.from, to: Math.max(open.to, to), near: Math.min(open.near, near), far: Math.max(open.far, far) };
      continue;
    }
    close();
    open = { from, to, near, far };
  }
  close();
  return items;
}

/** Bounds of the depth over a stretch; for an ellipse those of the whole. */
function depths(shadow: Parameters<typeof coordinateAt>[0], low: number, high: number): [number, number] {
  switch (shadow.kind) {
    case 'line': {
      const [a, b] = [coordinateAt(shadow, low, 2), coordinateAt(shadow, high, 2)];
      return [Math.min(a, b), Math.max(a, b)];
    }
    case 'ellipse': {
      const reach = Math.sqrt(shadow.u[2] ** 2 + shadow.v[2] ** 2);
      return [shadow.centre[2] - reach, shadow.centre[2] + reach];
    }
    case 'round':
    case 'spline': {
      let [near, far] = [Infinity, -Infinity];
      for (const p of shadow.points) {
        if (p[2] < near) near = p[2];
        if (p[2] > far) far = p[2];
      }
      return [near, far];
    }
  }
}

function boxed(carrier: Carrier, from: number, to: number, near: number, far: number): Item[] {
  const common = { carrier, near, far };
  switch (carrier.kind) {
    case 'line': {
      const [x0, y0] = [carrier.x + carrier.dx * from, carrier.y + carrier.dy * from];
      const [x1, y1] = [carrier.x + carrier.dx * to, carrier.y + carrier.dy * to];
      return [{ ...common, span: 0, from, to, box: [Math.min(x0, x1), Math.min(y0, y1), Math.max(x0, x1), Math.max(y0, y1)] }];
    }
    case 'ellipse': {
      const [rx, ry] = [Math.sqrt(carrier.ax ** 2 + carrier.bx ** 2), Math.sqrt(carrier.ay ** 2 + carrier.by ** 2)];
      return [{ ...common, span: 0, from, to: Math.min(to, from + FULL), box: [carrier.x - rx, carrier.y - ry, carrier.x + rx, carrier.y + ry] }];
    }
    case 'spline': {
      const items: Item[] = [];
      const { points } = carrier.shadow;
      for (let span = Math.floor(from); span < to && 3 * span + 3 < points.length; span += 1) {
        const hull = points.slice(3 * span, 3 * span + 4);
        const [xs, ys] = [hull.map((p) => p[0]), hull.map((p) => p[1])];
        const box = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)] as const;
        items.push({ ...common, span, from: Math.max(from, span), to: Math.min(to, span + 1), box });
      }
      return items;
    }
  }
}

/** An index of items by their boxes; undefined when there are none. */
export function indexOf(items: readonly Item[]): Flatbush | undefined {
  if (items.length === 0) return undefined;
  const index = new Flatbush(items.length);
  for (const { box } of items) index.add(box[0], box[1], box[2], box[3]);
  index.finish();
  return index;
}
