import {
  bevelNormal,
  cutsIn,
  definePart,
  fit,
  plusMinus,
  rectangularStock,
  sized,
  stationBook,
  threadSize,
  type HoleCut,
} from '../../engine/part/author/index.js';
import { tappingDrill } from '../../engine/trade/tapping.js';
import { crossheadAndPin } from '../mates/crosshead-and-pin.js';
import { crossheadLoads } from './crosshead/loads.js';
import { crossheadRelations } from './crosshead/relations.js';
import { crossheadParameters } from './crosshead/parameters.js';

/** Thousandths of an inch, in mm. */
const thou = 0.0254;

export default definePart({
  name: 'crosshead',
  title: 'Crosshead',
  summary: 'Two-bar crosshead: screwed boss, rod pocket, taper-headed pin, running grooves with bearing pads, drop-arm lug.',
  parameters: { ...crossheadParameters, ...crossheadAndPin },
  relations: crossheadRelations,
  loads: crossheadLoads,
  build: (p) => {
    const at = stationBook();
    const across = at.datum('x', 'rod axis');
    const up = at.datum('y', 'rod axis');
    const front = at.datum('z', 'front face');

    const [inner, outer] = at.pair(across, p.bodyWidth, 'cheek faces', { tolerance: plusMinus(2 * thou) });
    const [lower, upper] = at.pair(up, p.bodyHeight, 'bar faces');
    const [grooveInner, grooveOuter] = at.pair(across, p.grooveWidth, 'groove walls', {
      tolerance: { kind: 'deviations', upper: 2 * thou, lower: 0 },
    });
    const [floorLower, floorUpper] = at.pair(up, p.grooveSpan, 'groove floors', { tolerance: plusMinus(thou / 2) });
    const [pocketInner, pocketOuter] = at.pair(across, p.pocketWidth, 'pocket cheeks', {
      tolerance: { kind: 'deviations', upper: 3 * thou, lower: 0 },
    });
    const [pocketLower, pocketUpper] = at.pair(up, p.pocketHeight, 'pocket top and bottom');
    const [padInner, padOuter] = at.pair(across, p.padRowSpacing, 'pad screw rows');

    const shoulder = at.from(front, p.bossLength, 'shoulder');
    const bevelStart = at.from(front, p.bevelStart, 'start of the bevels');
    const pocketFloor = at.from(front, p.pocketFloor, 'pocket floor');
    const pin = at.from(front, p.pinPosition, 'pin axis', { tolerance: plusMinus(thou) });
    const rear = at.from(front, p.length, 'rear face', { purpose: 'overall' });
    const padRow = at.row(at.from(front, p.padFirst, 'first pad screw'), p.padPitch, p.padCount, 'pad screw');
    const lugFront = at.from(rear, -p.lugLength, 'front of the lug');
    const lugFace = at.from(outer, p.lugProud, 'lug face', { purpose: 'size' });
    const lugHoleAcross = at.from(up, -p.lugDrop, 'lug screw');
    const [lugBottom, lugTop] = at.pair(lugHoleAcross, p.lugHeight, 'bottom and top of the lug');
    const lugHoleAlong = at.from(rear, -p.lugLength / 2, 'lug screw');
    const oilAcross = at.from(across, p.oilHoleOffset, 'oil hole');

    const spare = (p.barWidth - p.bodyWidth - p.lugProud) / 2;
    const innerSide = at.from(inner, -spare, 'inner side of the bar');
    const outerSide = at.from(lugFace, spare, 'outer side of the bar');
    const stock = rectangularStock({
      along: 'z',
      x: [innerSide, outerSide],
      y: [lower, upper],
      z: [front.value - p.endAllowance, rear.value + p.endAllowance],
    });
    const cut = cutsIn(stock);

    const rodDrill = tappingDrill(p.rodThread).drill;
    const padDrill = tappingDrill(p.padThread).drill;
    const lugDrill = tappingDrill(p.lugThread).drill;
    const rodHole: HoleCut = {
      id: 'rod-hole',
      name: 'rod hole',
      entry: front,
      direction: '+z',
      at: [[across, up]],
      diameter: sized(rodDrill.diameter),
      tool: rodDrill.name,
      depth: sized(p.rodDrillDepth),
    };
    const padHoles = (side: 'upper' | 'lower'): HoleCut => ({
      id: `pad-holes-${side}`,
      name: `pad screw holes, ${side} groove`,
      entry: side === 'upper' ? floorUpper : floorLower,
      direction: side === 'upper' ? '-y' : '+y',
      at: padRow.flatMap((along) => [padInner, padOuter].map((row) => [row, along] as const)),
      diameter: sized(padDrill.diameter),
      tool: padDrill.name,
      depth: sized(p.padDrillDepth),
    });
    const tapPads = (side: 'upper' | 'lower') =>
      cut.tap({
        id: `pad-threads-${side}`,
        name: `pad screw holes, ${side} groove`,
        holes: padHoles(side),
        thread: threadSize(p.padThread),
        depth: sized(p.padThreadDepth),
      });
    const oilHole: HoleCut = {
      id: 'oil-hole',
      name: 'oil hole',
      entry: upper,
      direction: '-y',
      at: [[oilAcross, pin]],
      diameter: sized(p.oilHole.diameter),
      tool: p.oilHole.name,
      into: { station: up, name: 'cross bore' },
    };
    const crossBore: HoleCut = {
      id: 'cross-bore',
      name: 'cross bore for the pin',
      entry: outer,
      direction: '-x',
      at: [[up, pin]],
      diameter: sized(p.pinDiameter, { tolerance: fit('H7', p.pinDiameter) }),
      finish: 'reamed',
      texture: 1.6,
    };
    const lugHole: HoleCut = {
      id: 'lug-hole',
      name: 'lug screw hole',
      entry: lugFace,
      direction: '-x',
      at: [[lugHoleAcross, lugHoleAlong]],
      diameter: sized(lugDrill.diameter),
      tool: lugDrill.name,
      depth: sized(p.lugDrillDepth),
    };
    const groove = (side: 'upper' | 'lower') =>
      cut.pocket({
        id: `groove-${side}`,
        name: `running groove, ${side}`,
        tool: side === 'upper' ? '-y' : '+y',
        x: [grooveInner, grooveOuter],
        y: side === 'upper' ? [floorUpper, 'open'] : ['open', floorLower],
        z: ['open', 'open'],
        texture: side === 'upper' ? { '-y': 1.6 } : { '+y': 1.6 },
      });
    const bevel = (side: 'inner' | 'outer') =>
      cut.bevel({
        id: `bevel-${side}`,
        name: `bevel, ${side} side`,
        start: [side === 'outer' ? outer : inner, bevelStart],
        along: '-z',
        into: side === 'outer' ? '-x' : '+x',
        angle: p.bevelAngle,
        until: shoulder,
      });

    return {
      name: 'crosshead',
      title: 'Crosshead',
      engine: 'Tormentil, 5 inch gauge',
      units: 'in',
      quantity: 1,
      material: { name: 'mild steel 11SMn30, bright' },
      stock,
      stations: at.all(),
      setUps: [
        { id: 'A', machine: 'lathe', holding: 'four-jaw chuck, gripped by the rear end, set true to the rod axis', grip: { kind: 'four-jaw chuck', between: [pin.id, rear.id] }, up: '-z', right: '+y', zero: [across.id, up.id, front.id] },
        { id: 'B', machine: 'mill', holding: 'vice, square by the bar faces, boss down', grip: { kind: 'vice', between: [lower.id, upper.id] }, up: '+z', right: '+x', zero: [across.id, up.id, front.id] },
        { id: 'C', machine: 'mill', holding: 'vice on parallels, gripped by the sides', grip: { kind: 'vice', between: [innerSide.id, outerSide.id] }, up: '+y', right: '-z', zero: [across.id, front.id, up.id] },
        { id: 'D', machine: 'mill', holding: 'vice on parallels, turned over', grip: { kind: 'vice', between: [innerSide.id, outerSide.id] }, up: '-y', right: '-z', zero: [across.id, front.id, up.id] },
        { id: 'E', machine: 'mill', holding: 'vice on parallels, gripped by the bar faces', grip: { kind: 'vice', between: [lower.id, upper.id] }, up: '+x', right: '-z', zero: [up.id, front.id, across.id] },
        { id: 'F', machine: 'mill', holding: 'vice, on a packing plate relieved for the lug', grip: { kind: 'vice', between: [lower.id, upper.id] }, up: '-x', right: '-z', zero: [up.id, front.id, across.id] },
        { id: 'G', machine: 'mill', holding: `vice on ${p.bevelAngle}° angle packing`, grip: { kind: 'vice', between: [lower.id, upper.id] }, up: bevelNormal('-z', '-x', p.bevelAngle), right: '+y', zero: [up.id, front.id, across.id] },
        { id: 'H', machine: 'mill', holding: `vice on ${p.bevelAngle}° angle packing, turned over`, grip: { kind: 'vice', between: [lower.id, upper.id] }, up: bevelNormal('-z', '+x', p.bevelAngle), right: '-y', zero: [up.id, front.id, across.id] },
      ],
      operations: [
        { number: 10, title: 'Face the front end', setUp: 'A', cutter: { name: 'facing tool' }, cuts: [cut.face({ id: 'front', name: 'front end', at: front, side: '-z' })], check: ['a clean face; this is the zero for all lengths'] },
        {
          number: 20,
          title: 'Turn the boss',
          setUp: 'A',
          cutter: { name: 'knife tool, nose radius to suit the fillet' },
          cuts: [
            cut.turn({ id: 'boss', name: 'boss', axis: 'z', centre: [across, up], from: front, open: true, steps: [{ to: shoulder, diameter: sized(p.bossDiameter), fillet: p.bossFillet }] }),
            cut.turnedChamfer({ id: 'boss-chamfer', name: 'boss', centre: [across, up], at: front, outward: '-z', diameter: p.bossDiameter, leg: sized(p.bossChamfer) }),
          ],
          check: ['diameter and shoulder by micrometer'],
          caution: ['rotating-work', 'chuck-key'],
        },
        { number: 30, title: 'Drill the rod hole', setUp: 'A', cutter: { name: `centre drill, then drill ${rodDrill.name}`, diameter: rodDrill.diameter }, cuts: [cut.hole(rodHole)], check: ['depth by the tailstock scale'] },
        {
          number: 40,
          title: 'Bore the register',
          setUp: 'A',
          cutter: { name: 'small boring tool' },
          cuts: [cut.counterbore({ id: 'register', name: 'register for the rod', verb: 'Bore', holes: rodHole, diameter: sized(p.registerDiameter, { tolerance: fit('H7', p.registerDiameter) }), depth: sized(p.registerDepth), texture: 1.6 })],
          check: ['plug gauge, or the rod itself: a sliding fit without shake'],
        },
        { number: 50, title: 'Tap the rod hole', setUp: 'A', cutter: { name: `taper and plug tap ${p.rodThread.designation}, from the tailstock` }, cuts: [cut.tap({ id: 'rod-thread', name: 'rod hole', holes: rodHole, thread: threadSize(p.rodThread), depth: sized(p.rodThreadDepth) })], check: ['the rod screws home against the register'] },
        { number: 60, title: 'Face the rear end to length', setUp: 'B', cutter: { name: 'end mill' }, cuts: [cut.face({ id: 'rear', name: 'rear end', at: rear, side: '+z' })], check: ['length over all by caliper'] },
        {
          number: 70,
          title: 'Mill the rod pocket',
          setUp: 'B',
          cutter: { name: 'long end mill', diameter: p.pocketCorner * 2 },
          cuts: [cut.pocket({ id: 'rod-pocket', name: 'rod pocket', tool: '-z', x: [pocketInner, pocketOuter], y: [pocketLower, pocketUpper], z: [pocketFloor, 'open'], corner: p.pocketCorner })],
          leave: [{ length: 5 * thou }, ' on the cheeks for the last cut at full depth'],
          check: ['width by the rod’s own small end; both webs alike'],
        },
        { number: 80, title: 'Mill the upper running groove', setUp: 'C', cutter: { name: 'end mill' }, cuts: [groove('upper')], leave: [{ length: 5 * thou }, ' on floor and walls for the last cut'], check: ['depth from the bar face; the slide bar as gauge for the width'] },
        { number: 90, title: 'Drill the pad screw holes', setUp: 'C', cutter: { name: `drill ${padDrill.name}`, diameter: padDrill.diameter }, cuts: [cut.hole(padHoles('upper'))], check: ['depth stop tried on scrap'], caution: ['small-drill'] },
        { number: 100, title: 'Tap the pad screw holes', setUp: 'C', cutter: { name: `bottoming tap ${p.padThread.designation}, in a guide` }, cuts: [tapPads('upper')], check: ['a screw enters to full depth in each'], caution: ['small-tap', 'eyes'] },
        { number: 110, title: 'Drill the oil hole', setUp: 'C', cutter: { name: `drill ${p.oilHole.name}`, diameter: p.oilHole.diameter }, cuts: [cut.hole(oilHole)], check: ['wait with this hole until the hand is certain'] },
        { number: 120, title: 'Mill the lower running groove', setUp: 'D', cutter: { name: 'end mill' }, cuts: [groove('lower')], leave: [{ length: 5 * thou }, ' on floor and walls for the last cut'], check: ['over both floors by micrometer; equal from the bar faces'] },
        { number: 130, title: 'Drill the pad screw holes', setUp: 'D', cutter: { name: `drill ${padDrill.name}`, diameter: padDrill.diameter }, cuts: [cut.hole(padHoles('lower'))], check: ['as operation 90'], caution: ['small-drill'] },
        { number: 140, title: 'Tap the pad screw holes', setUp: 'D', cutter: { name: `bottoming tap ${p.padThread.designation}, in a guide` }, cuts: [tapPads('lower')], check: ['as operation 100'], caution: ['small-tap', 'eyes'] },
        {
          number: 150,
          title: 'Mill the outer cheek round the lug',
          setUp: 'E',
          cutter: { name: 'end mill' },
          cuts: [cut.face({ id: 'lug-face', name: 'lug', at: lugFace, side: '+x' }), cut.clearAround({ id: 'outer-cheek', name: 'outer cheek', at: outer, side: '+x', keep: [[lugBottom, lugTop], [lugFront, rear]] })],
          check: ['cheek face from the rod axis, by depth gauge from a rod in the boss'],
        },
        { number: 160, title: 'Drill and ream the cross bore', setUp: 'E', cutter: { name: 'drill under size, then reamer', diameter: p.pinDiameter }, cuts: [cut.hole(crossBore)], check: ['plug gauge; the pin itself'] },
        { number: 170, title: 'Countersink for the pin head', setUp: 'E', cutter: { name: '90° countersink' }, cuts: [cut.countersink({ id: 'pin-seat', name: 'pin seat', holes: crossBore, diameter: sized(p.headDiameter), angle: 90, texture: 1.6 })], check: ['the pin head sits flush, blue shows all round'] },
        { number: 180, title: 'Drill the lug screw hole', setUp: 'E', cutter: { name: `drill ${lugDrill.name}`, diameter: lugDrill.diameter }, cuts: [cut.hole(lugHole)], check: ['depth by the quill’s stop; the drop arm’s own hole as template'] },
        { number: 190, title: 'Tap the lug screw hole', setUp: 'E', cutter: { name: `plug tap ${p.lugThread.designation}` }, cuts: [cut.tap({ id: 'lug-thread', name: 'lug screw hole', holes: lugHole, thread: threadSize(p.lugThread), depth: sized(p.lugThreadDepth) })], check: ['the drop-arm screw enters to full depth, square to the lug'] },
        { number: 200, title: 'Mill the inner cheek', setUp: 'F', cutter: { name: 'end mill' }, cuts: [cut.face({ id: 'inner-cheek', name: 'inner cheek', at: inner, side: '-x' })], check: ['width over the cheeks by micrometer'] },
        { number: 210, title: 'Mill the outer bevel', setUp: 'G', cutter: { name: 'end mill' }, cuts: [bevel('outer')], check: ['angle by protractor, clear of the boss by eye'] },
        { number: 220, title: 'Mill the inner bevel', setUp: 'H', cutter: { name: 'end mill' }, cuts: [bevel('inner')], check: ['angle by protractor, clear of the boss by eye'] },
      ],
      notes: [['Bearing pads are fitted in the running grooves and scraped to the slide bars.'], ['Make the pin first: it is the gauge for the cross bore and its seat.']],
      cautions: ['sharp-edges', 'eyes'],
      attitude: { kind: 'milled', front: '+x', up: '+y' },
      handAxis: 'x',
      hand: 'right',
      texture: 3.2,
    };
  },
});
