import { cutsIn, fit, rectangularStock, roundStock, sized, stationBook, threadSize } from '../../engine/part/author/index.js';
import type { Part } from '../../engine/part/part.js';
import { needsOf } from '../../engine/plan/fixture/needs-of.js';
import { statesOf } from '../../engine/plan/states/state.js';
import { compareSolidHands, HAND_SEGMENTS } from '../../engine/solid/hand.js';
import { loadKernel } from '../../engine/solid/kernel.js';
import { soundSolid } from '../../engine/solid/sound-solid.js';
import { findThread } from '../../engine/trade/threads.js';
import type { Shop } from '../../engine/trade/shop/shop.js';
import type { NeedsOfPart } from './fixture-needs.js';

const common = {
  engine: 'trial',
  units: 'mm',
  quantity: 1,
  material: { name: 'bright mild steel' },
  notes: [],
  cautions: [],
  handAxis: 'x',
  hand: 'right',
  texture: 3.2,
} as const;

/** A turned pin with a cross hole drilled level on the mill: diameter, length, and where the hole is, mm. */
export function crossDrilledPin(diameter = 16, length = 60, hole = 50): Part {
  const at = stationBook();
  const side = at.datum('x', 'axis');
  const up = at.datum('y', 'axis');
  const end = at.datum('z', 'end');
  const other = at.from(end, length, 'other end');
  const place = at.from(end, hole, 'cross hole');
  const top = at.derived(up, diameter / 2, 'top', 'the diameter');
  const centre = [side, up] as const;
  const stock = roundStock({ along: 'z', centre, diameter: diameter + 2, ends: [end, other] });
  const cut = cutsIn(stock);
  return {
    ...common,
    name: 'trial-pin',
    title: 'Trial pin',
    stock,
    stations: at.all(),
    setUps: [
      { id: 'A', machine: 'lathe', holding: 'between centres', up: '-z', right: '+y', zero: [end.id] },
      { id: 'B', machine: 'mill', holding: 'V-block', up: '+y', right: '+z', zero: [side.id, end.id, up.id] },
    ],
    operations: [
      { number: 10, title: 'Turn', setUp: 'A', cutter: { name: 'knife tool' }, cuts: [cut.turn({ id: 'body', name: 'body', axis: 'z', centre, from: end, open: true, steps: [{ to: other, diameter: sized(diameter, { tolerance: fit('h7', diameter) }) }] })] },
      { number: 20, title: 'Cross-drill', setUp: 'B', cutter: { name: 'drill 4 mm', diameter: 4 }, cuts: [cut.hole({ id: 'cross', name: 'cross hole', entry: top, direction: '-y', at: [[side, place]], diameter: sized(4) })] },
    ],
    attitude: { kind: 'turned', front: '-x', up: '+y' },
  };
}

/** A bored bush, whose outside and far end are turned on a mandrel. `whole`: the end is faced right to the bore. */
export function boredBush({ bore = 12, tolerance = 'H7', length = 30, whole = false } = {}): Part {
  const at = stationBook();
  const side = at.datum('x', 'axis');
  const up = at.datum('y', 'axis');
  const end = at.datum('z', 'near end');
  const other = at.from(end, length, 'far end');
  const centre = [side, up] as const;
  const outside = bore + 14;
  const stock = roundStock({ along: 'z', centre, diameter: outside + 2, ends: [end.value - 1, whole ? other.value + 1 : other] });
  const cut = cutsIn(stock);
  return {
    ...common,
    name: 'trial-bush',
    title: 'Trial bush',
    stock,
    stations: at.all(),
    setUps: [
      { id: 'A', machine: 'lathe', holding: 'three-jaw chuck', up: '-z', right: '+y', zero: [end.id] },
      { id: 'B', machine: 'lathe', holding: 'mandrel', up: '+z', right: '+y', zero: [end.id] },
    ],
    operations: [
      { number: 10, title: 'Face and bore', setUp: 'A', cutter: { name: 'boring tool' }, cuts: [cut.face({ id: 'end', name: 'near end', at: end, side: '-z' }), cut.hole({ id: 'bore', name: 'bore', entry: end, direction: '+z', at: [centre], diameter: sized(bore, { tolerance: fit(tolerance, bore) }), finish: 'bored' })] },
      {
        number: 20,
        title: 'Turn the outside',
        setUp: 'B',
        cutter: { name: 'knife tool' },
        cuts: [cut.turn({ id: 'outside', name: 'outside', axis: 'z', centre, from: other, open: true, steps: [{ to: at.from(end, 2, 'collar'), diameter: sized(outside) }] }), ...(whole ? [cut.face({ id: 'far', name: 'far end', at: other, side: '+z' })] : [])],
      },
    ].map((operation) => operation as Part['operations'][number]),
    attitude: { kind: 'turned', front: '-x', up: '+y' },
  };
}

/** A block, 40 x 20 x 12, whose top edge is beveled at an angle; metric, with a tapped hole in its end. */
export function beveledBlock(angle: number): Part {
  const at = stationBook();
  const middle = at.datum('y', 'middle');
  const base = at.datum('x', 'base');
  const end = at.datum('z', 'end');
  const [near, far] = at.pair(middle, 20, 'sides');
  const top = at.from(base, 12, 'top');
  const other = at.from(end, 40, 'other end');
  const start = at.from(end, 25, 'start of the bevel');
  const stop = at.from(end, 10, 'end of the bevel');
  const stock = rectangularStock({ along: 'z', x: [base, top], y: [near, far], z: [end, other] });
  const cut = cutsIn(stock);
  const radians = (angle * Math.PI) / 180;
  return {
    ...common,
    name: 'trial-block',
    title: 'Trial block',
    stock,
    stations: at.all(),
    setUps: [{ id: 'A', machine: 'mill', holding: 'vice on angle packing', grip: { kind: 'vice', between: [near.id, far.id] }, up: [Math.cos(radians), 0, -Math.sin(radians)], right: '+y', zero: [base.id, middle.id, end.id] }],
    operations: [{ number: 10, title: 'Bevel', setUp: 'A', cutter: { name: 'end mill' }, cuts: [cut.bevel({ id: 'bevel', name: 'bevel', start: [top, start], along: '-z', into: '-x', angle, until: stop })] }],
    attitude: { kind: 'milled', front: '+y', up: '+x' },
  };
}

/** A plate tapped in the middle without a register, whose edge is milled. */
export function tappedPlate(designation: string): Part {
  const at = stationBook();
  const side = at.datum('x', 'axis');
  const up = at.datum('y', 'axis');
  const end = at.datum('z', 'under side');
  const over = at.from(end, 15, 'upper side');
  const [low, high] = at.pair(side, 40, 'sides');
  const [front, back] = at.pair(up, 40, 'ends');
  const edge = at.from(side, 18, 'edge');
  const stock = rectangularStock({ along: 'z', x: [low, high], y: [front, back], z: [end, over] });
  const cut = cutsIn(stock);
  const thread = findThread(designation);
  const hole = { id: 'hole', name: 'tapped hole', entry: end, direction: '+z', at: [[side, up]], diameter: sized(thread.minorInternal) } as const;
  return {
    ...common,
    name: 'trial-plate',
    title: 'Trial plate',
    stock,
    stations: at.all(),
    setUps: [
      { id: 'A', machine: 'drill', holding: 'vice', up: '-z', right: '+x', zero: [side.id, up.id, end.id] },
      { id: 'B', machine: 'mill', holding: 'arbor', up: '+z', right: '+x', zero: [side.id, up.id, end.id] },
    ],
    operations: [
      { number: 10, title: 'Drill and tap', setUp: 'A', cutter: { name: 'tap' }, cuts: [cut.hole(hole), cut.tap({ id: 'thread', name: 'tapped hole', holes: hole, thread: threadSize(thread) })] },
      { number: 20, title: 'Mill an edge', setUp: 'B', cutter: { name: 'end mill' }, cuts: [cut.face({ id: 'edge', name: 'edge', at: edge, side: '+x' })] },
    ],
    attitude: { kind: 'milled', front: '-y', up: '+z' },
  };
}

/** What a trial part asks of its fixtures. */
export async function needsOfTrial(part: Part, shop?: Shop): Promise<Omit<NeedsOfPart, 'of'>> {
  const kernel = await loadKernel();
  const comparison = compareSolidHands(kernel, soundSolid(kernel, part, { segments: HAND_SEGMENTS }), part.handAxis);
  const states = statesOf(kernel, part);
  return { kernel, part, states, needs: needsOf(kernel, part, states, { shop, unit: part.units, comparison }) };
}
