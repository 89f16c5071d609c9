import { cutsIn, definePart, fit, plusMinus, rectangularStock, sized, stationBook, threadSize, type HoleCut } from '../../engine/part/author/index.js';
import { tappingDrill } from '../../engine/trade/tapping.js';
import { forkLoads } from './valve-rod-fork/loads.js';
import { forkParameters } from './valve-rod-fork/parameters.js';
import { forkRelations } from './valve-rod-fork/relations.js';

/** Thousandths of an inch, in mm. */
const thou = 0.0254;

export default definePart({
  name: 'valve-rod-fork',
  title: 'Valve-rod fork',
  summary: 'Fork from square bar: narrow slot for a tongue, cross pin let into the outer prong, oil hole, shank tapped for the rod.',
  parameters: forkParameters,
  relations: forkRelations,
  loads: forkLoads,
  build: (p) => {
    const at = stationBook();
    const across = at.datum('x', 'rod axis');
    const up = at.datum('y', 'rod axis');
    const end = at.datum('z', 'shank end');
    const [inner, outer] = at.pair(across, p.bar, 'prong faces');
    const [lower, upper] = at.pair(up, p.bar, 'body sides');
    const [innerWall, outerWall] = at.pair(across, p.tongue, 'slot walls', { tolerance: fit('D10', p.tongue) });
    const shoulder = at.from(end, p.shankLength, 'shoulder', { purpose: 'size' });
    const pin = at.from(end, p.pinPosition, 'pin axis', { tolerance: plusMinus(2 * thou) });
    const root = at.from(pin, -p.rootBehind, 'root of the slot');
    const tip = at.from(pin, p.bar / 2, 'fork end');
    // Midway in the metal between the slot and the recess for the head.
    const oilAcross = at.from(across, (p.bar / 2 - p.headDepth + p.tongue / 2) / 2, 'oil hole');

    const stock = rectangularStock({ along: 'z', x: [inner, outer], y: [lower, upper], z: [end.value - p.endAllowance, tip.value + p.endAllowance] });
    const cut = cutsIn(stock);
    const drill = tappingDrill(p.rodThread).drill;
    const rodHole: HoleCut = {
      id: 'rod-hole',
      name: 'rod hole',
      entry: end,
      direction: '+z',
      at: [[across, up]],
      diameter: sized(drill.diameter),
      tool: drill.name,
      depth: sized(p.drillDepth),
    };
    const pinHole: HoleCut = {
      id: 'pin-hole',
      name: 'cross hole for the pin',
      entry: outer,
      direction: '-x',
      at: [[up, pin]],
      diameter: sized(p.pinDiameter, { tolerance: fit('H7', p.pinDiameter) }),
      finish: 'reamed',
      texture: 1.6,
    };
    const finishDepth = p.bar / 2 + p.finishBehind;
    return {
      name: 'valve-rod-fork',
      title: 'Valve-rod fork',
      engine: 'Tormentil, 5 inch gauge',
      units: 'in',
      quantity: 1,
      material: { name: 'mild steel 11SMn30, bright' },
      stock,
      stations: at.all(),
      setUps: [
        { id: 'A', machine: 'lathe', holding: 'four-jaw chuck, gripped by the fork end, bar faces set true', grip: { kind: 'four-jaw chuck', between: [root.id, tip.id] }, up: '-z', right: '+y', zero: [across.id, up.id, end.id] },
        { id: 'B', machine: 'mill', holding: 'vice by the body sides behind the slot, fork end out past the jaws, shank end against a stop', grip: { kind: 'vice', between: [lower.id, upper.id] }, up: '+x', right: '+z', zero: [up.id, end.id, outer.id] },
        { id: 'C', machine: 'mill', holding: 'turntable, on a pin in the cross hole over its middle, slot packed, shank against a stop; or file to hardened buttons', grip: { kind: 'fixture', between: [inner.id, outer.id] }, up: '+x', right: '+z', zero: [up.id, pin.id, outer.id] },
        { id: 'D', machine: 'drill', holding: 'vice by the body sides, slot packed with a strip of the tongue’s thickness', grip: { kind: 'vice', between: [lower.id, upper.id] }, up: '+x', right: '+z', zero: [up.id, pin.id, outer.id] },
        { id: 'E', machine: 'drill', holding: 'vice by the prong faces, slot packed, upper side up', grip: { kind: 'vice', between: [inner.id, outer.id] }, up: '+y', right: '+z', zero: [across.id, pin.id, upper.id] },
      ],
      operations: [
        { number: 10, title: 'Face the shank end', setUp: 'A', cutter: { name: 'facing tool' }, cuts: [cut.face({ id: 'shank-face', name: 'shank end', at: end, side: '-z' })], check: ['a clean face; this is the zero for all lengths'], caution: ['rotating-work', 'chuck-key'] },
        {
          number: 20,
          title: 'Turn the shank',
          setUp: 'A',
          cutter: { name: 'knife tool' },
          cuts: [
            cut.turn({ id: 'shank', name: 'shank', axis: 'z', centre: [across, up], from: end, open: true, steps: [{ to: shoulder, diameter: sized(p.shankDiameter) }] }),
            cut.turnedChamfer({ id: 'shank-chamfer', name: 'shank', centre: [across, up], at: end, outward: '-z', diameter: p.shankDiameter, leg: sized(p.shankChamfer) }),
          ],
          check: ['diameter by micrometer, shoulder by depth gauge'],
        },
        { number: 30, title: 'Drill the rod hole', setUp: 'A', cutter: { name: `centre drill, then drill ${drill.name}`, diameter: drill.diameter }, cuts: [cut.hole(rodHole)], check: ['depth by the tailstock scale'] },
        { number: 40, title: 'Tap the rod hole', setUp: 'A', cutter: { name: `taper and plug tap ${p.rodThread.designation}, from the tailstock` }, cuts: [cut.tap({ id: 'rod-thread', name: 'rod hole', holes: rodHole, thread: threadSize(p.rodThread), depth: sized(p.threadDepth) })], check: ['the rod screws in to full depth, and its lock nut sits square on the shank'], caution: ['small-tap'] },
        { number: 50, title: 'Mill the fork end to length', setUp: 'B', cutter: { name: 'end mill' }, cuts: [cut.face({ id: 'fork-end', name: 'fork end', at: tip, side: '+z' })], check: ['length over all by micrometer'], caution: ['clamping'] },
        { number: 60, title: 'Drill and ream the cross hole', setUp: 'B', cutter: { name: 'drill under size, then reamer', diameter: p.pinDiameter }, cuts: [cut.hole(pinHole)], check: ['plug gauge; the pin itself'], caution: ['eyes'] },
        {
          number: 70,
          title: 'Saw the slot',
          setUp: 'B',
          cutter: { name: 'slitting saw on an arbor', diameter: p.sawDiameter, width: p.sawThickness },
          cuts: [cut.openSlot({ id: 'slot', name: 'slot for the tongue', walls: [innerWall, outerWall], into: '-z', root, mouth: tip, texture: 1.6, finishTo: { depth: sized(finishDepth), under: p.roughUnder } })],
          leave: [{ length: p.roughUnder / 2 }, ' on each wall down to the root; then the last cuts to the finish depth alone'],
          check: ['the tongue, or a gauge of its thickness, swings without shake; both prongs alike by micrometer'],
          caution: ['clamping', 'eyes'],
        },
        {
          number: 80,
          title: 'Round the fork end',
          setUp: 'C',
          cutter: { name: 'end mill' },
          cuts: [cut.roundedEnd({ id: 'round', name: 'fork end', axis: 'x', centre: [up, pin], radius: sized(p.bar / 2), end: '+z' })],
          check: ['runs out into the body sides without a step; over the pin and the round end by micrometer'],
          caution: ['clamping'],
        },
        {
          number: 90,
          title: 'Let in the head of the pin',
          setUp: 'D',
          cutter: { name: 'counterbore with a pilot in the cross hole', diameter: p.headDiameter },
          cuts: [cut.counterbore({ id: 'head-recess', name: 'recess for the pin head', holes: pinHole, diameter: sized(p.headDiameter), depth: sized(p.headDepth) })],
          check: ['the head lies flush; the prong under it keeps its thickness'],
        },
        {
          number: 100,
          title: 'Drill the oil hole',
          setUp: 'E',
          cutter: { name: `drill ${p.oilHole.name}`, diameter: p.oilHole.diameter },
          cuts: [cut.hole({ id: 'oil-hole', name: 'oil hole', entry: upper, direction: '-y', at: [[oilAcross, pin]], diameter: sized(p.oilHole.diameter), tool: p.oilHole.name, into: { station: up, name: 'cross hole' } })],
          check: ['in the prong with the recess, and which side is up: with it the hand is settled; no burr in the cross hole'],
          caution: ['small-drill'],
        },
      ],
      notes: [['The pin has its head outward; a washer and split pin or a nut inward.'], ['The tongue is made first: it is the gauge for the slot.']],
      cautions: ['sharp-edges', 'eyes'],
      attitude: { kind: 'milled', front: '+x', up: '+y' },
      handAxis: 'x',
      hand: 'right',
      texture: 3.2,
    };
  },
});
