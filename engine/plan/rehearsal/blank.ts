import type { Part, Stock } from '../../part/part.js';
import type { Axis, Station } from '../../part/station.js';
import { acrossOf, axes, indexOf } from '../../part/author/directions.js';
import { rectangularStock, roundStock, type StockFace } from '../../part/author/stock.js';
import { sized } from '../../part/author/stations.js';
import type { Form } from '../../part/form.js';
import type { Shop } from '../../trade/shop/shop.js';
import { flatBar, roundBar } from './bar.js';
import { longAxis, type Extent } from './blank-extent.js';
import { sidesOf, type Side } from './blank-sides.js';

/** The blank of a test piece, with the stations that its own ends and sides make. */
export interface Blank {
  readonly stock: Stock;
  /** Stations that the part does not have. */
  readonly stations: readonly Station[];
  /** Ends that are to be faced at a station that the part gets from no facing cut. */
  readonly toFace: readonly Side[];
  /** Sides where the piece ends and the part goes on: its metal there is not the part's. */
  readonly cutOff: readonly Side[];
}

/** Left on an end that is faced, mm, where the part says nothing of it. */
const endAllowance = 1;

/** The smallest blank from a bar as sold that holds what is needed; a flat bar may lie along another axis than the part's own. */
export function blankOf(part: Part, extent: Extent, shop: Shop | undefined, along: Axis = longAxis(part)): Blank {
  const sides = sidesOf(part, extent.bounds);
  const pair = (axis: Side['axis']): readonly [Side, Side] => [sides.find((side) => side.axis === axis && side.end === 'low')!, sides.find((side) => side.axis === axis && side.end === 'high')!];
  const made: Station[] = [];
  const toFace: Side[] = [];
  const [lowEnd, highEnd] = pair(along);
  const end = (side: Side): StockFace => {
    const outward = side.end === 'low' ? -1 : 1;
    if (side.station === undefined) return freeSide(part, along, side, side.at, made);
    if (side.cut === undefined) return side.station;
    const faced = side.cut.forms.some(({ kind }) => kind === 'half-space');
    if (!faced) toFace.push(side);
    return faced && Math.abs(side.bar - side.at) > 1e-6 ? side.bar : side.at + outward * endAllowance;
  };
  const ends = [end(lowEnd), end(highEnd)] as const;
  const cutOff = (checked: readonly Side[]): readonly Side[] => checked.filter((side) => side.station === undefined && Math.abs(side.at - side.bar) > 1e-6);
  if (part.stock.shape === 'rectangular') {
    const [a, b] = acrossOf(along);
    const across = [pair(a), pair(b)] as const;
    const bar = flatBar(part, shop, across[0], across[1]);
    const faces = across.map((two, i) =>
      two.map((side, k): StockFace => {
        const skin = k === 0 ? bar.skins[i]!.low : bar.skins[i]!.high;
        const at = side.end === 'low' ? side.at - skin : side.at + skin;
        if (skin < 1e-6 && side.station !== undefined) return side.station;
        return side.station === undefined ? freeSide(part, along, side, at, made) : at;
      }),
    );
    const of = (axis: Side['axis']): readonly [StockFace, StockFace] => (axis === along ? ends : axis === a ? [faces[0]![0]!, faces[0]![1]!] : [faces[1]![0]!, faces[1]![1]!]);
    return { stock: rectangularStock({ along, x: of('x'), y: of('y'), z: of('z') }), stations: made, toFace, cutOff: cutOff(sides) };
  }
  const stock = part.stock.shape === 'round' ? roundBlank(part, along, roundBar(part, shop, extent.radius ?? Infinity), ends) : shortened(part, along, ends);
  return { stock, stations: made, toFace, cutOff: cutOff([lowEnd, highEnd]) };
}

/** A station for a side where nothing of the part lies, from the axis's datum. */
function freeSide(part: Part, along: Axis, side: Side, at: number, made: Station[]): Station {
  const datum = part.stations.find(({ axis, placing }) => axis === side.axis && placing.kind === 'datum');
  // The name must hold for the mirror image too: no direction in it.
  const kind = side.axis === along ? 'sawn end' : 'side';
  const name = made.some((other) => other.axis === side.axis) ? `second ${kind} of the blank` : `${kind} of the blank`;
  const from = datum?.value ?? 0;
  const station: Station = {
    id: `${side.axis}:${name}`,
    axis: side.axis,
    name,
    value: at,
    placing: datum === undefined || Math.abs(at - from) < 1e-9 ? { kind: 'datum' } : { kind: 'from', station: datum.id, distance: sized(Math.abs(at - from), {}, 'size'), sense: at < from ? -1 : 1 },
  };
  made.push(station);
  return station;
}

function roundBlank(part: Part, along: Side['axis'], diameter: number, ends: readonly [StockFace, StockFace]): Stock {
  const form = part.stock.forms[0]!;
  const origin = form.kind === 'half-space' ? [0, 0, 0] : form.frame.origin;
  const [u, v] = acrossOf(along);
  const centre = (axis: Side['axis']): Station => ({ id: `${axis}:axis of the blank`, axis, name: 'axis of the blank', value: origin[indexOf(axis)]!, placing: { kind: 'datum' } });
  return roundStock({ along, centre: [centre(u), centre(v)], diameter, ends });
}

/** A bar of another shape, only shorter. */
function shortened(part: Part, along: Side['axis'], ends: readonly [StockFace, StockFace]): Stock {
  const at = (face: StockFace): number => (typeof face === 'number' ? face : face.value);
  const stations = (face: StockFace): { readonly stations: readonly string[] } => ({ stations: typeof face === 'number' ? [] : [face.id] });
  const i = axes.indexOf(along);
  const form = part.stock.forms[0]!;
  if (form.kind !== 'prism') throw new RangeError(`a bar of the shape ${part.stock.shape} is one prism`);
  const [origin, way] = [form.frame.origin[i]!, Math.sign(form.frame.z[i]!)];
  const spans = [at(ends[0]), at(ends[1])].map((value) => (value - origin) * way).sort((a, b) => a - b) as [number, number];
  const cut: Form = { ...form, low: spans[0], high: spans[1] };
  const [lowFace, highFace] = way > 0 ? [form.lowFace, form.highFace] : [form.highFace, form.lowFace];
  return {
    ...part.stock,
    length: at(ends[1]) - at(ends[0]),
    forms: [cut],
    faces: { ...part.stock.faces, [lowFace]: stations(ends[0]), [highFace]: stations(ends[1]) },
  };
}
