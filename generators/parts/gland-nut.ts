import { cutsIn, definePart, deviations, fit, hexagonStock, overCorners, plusMinus, sized, stationBook, threadSize } from '../../engine/part/author/index.js';
import { coreOf } from './gland-nut/core.js';
import { glandNutParameters } from './gland-nut/parameters.js';
import { glandNutRelations } from './gland-nut/relations.js';

/** Thousandths of an inch, in mm. */
const thou = 0.0254;

/** Width of a parting tool for small work, and from it to the jaws, mm. */
const parting = { kerf: 62.5 * thou, clear: 93.75 * thou } as const;

export default definePart({
  name: 'gland-nut',
  title: 'Gland nut',
  summary: 'Hexagon gland nut with a fine thread against a shoulder, a groove for its run-out and a running bore for the rod.',
  parameters: glandNutParameters,
  relations: glandNutRelations,
  build: (p) => {
    const at = stationBook();
    const across = at.datum('x', 'bore axis');
    const up = at.datum('y', 'bore axis');
    const mouth = at.datum('z', 'thread end');
    const flats = at.pair(across, p.flats, 'flats', { purpose: 'size' });
    const shoulder = at.from(mouth, p.shoulderDepth, 'shoulder', { tolerance: plusMinus(5 * thou) });
    const groove = at.from(shoulder, -p.grooveWidth, 'start of the groove', { purpose: 'size' });
    const outer = at.from(mouth, p.length, 'outer end', { purpose: 'overall' });
    const parted = at.from(outer, p.faceAllowance, 'parted face');
    const jaws = at.from(parted, parting.kerf + parting.clear, 'jaws');
    const bar = at.from(jaws, p.gripLength, 'end of the bar');
    const centre = [across, up] as const;
    const bore = { axis: 'z', centre } as const;
    const stock = hexagonStock({ along: 'z', centre, flats, ends: [mouth.value - p.endAllowance, bar] });
    const cut = cutsIn(stock);
    const core = coreOf(p.thread);
    const corners = { centre, across: overCorners(p.flats), circle: sized(p.cornerCircle) } as const;
    const tapped = p.threading === 'tap';
    return {
      name: 'gland-nut',
      title: 'Gland nut',
      engine: 'Tormentil, 5 inch gauge',
      units: 'in',
      quantity: 2,
      material: { name: 'phosphor bronze' },
      stock,
      stations: at.all(),
      setUps: [
        { id: 'A', machine: 'lathe', holding: 'three-jaw chuck, by the hexagon, as little as will part off standing out', grip: { kind: 'three-jaw chuck', between: [jaws.id, bar.id] }, up: '-z', right: '+y', zero: [mouth.id] },
        { id: 'B', machine: 'lathe', holding: 'screwed on a stub turned and threaded in place, home against its shoulder', grip: { kind: 'fixture', between: [mouth.id, groove.id] }, up: '+z', right: '+y', zero: [outer.id] },
      ],
      operations: [
        { number: 10, title: 'Face the thread end', setUp: 'A', cutter: { name: 'facing tool' }, cuts: [cut.face({ id: 'mouth-face', name: 'thread end', at: mouth, side: '-z' })], check: ['a clean face; all depths are taken from it'], caution: ['rotating-work', 'chuck-key'] },
        { number: 20, title: 'Chamfer the corners', setUp: 'A', cutter: { name: 'chamfer tool, 30°' }, cuts: [cut.cornerChamfer({ id: 'mouth-corners', name: 'corners, thread end', ...corners, at: mouth, outward: '-z' })], check: ['the circle on the face, by caliper'] },
        { number: 30, title: 'Drill and ream for the rod', setUp: 'A', cutter: { name: 'centre drill, drill under size, adjustable reamer set to the limits', diameter: p.rod }, cuts: [cut.hole({ id: 'rod-bore', name: 'bore for the rod', entry: mouth, direction: '+z', at: [centre], diameter: sized(p.rod, { tolerance: fit('F8', p.rod) }), finish: 'reamed', texture: 1.6 })], check: ['the rod itself: it runs freely without shake', '; past the parting is deep enough'] },
        { number: 40, title: 'Bore for the thread', setUp: 'A', cutter: { name: 'small boring tool, square end' }, cuts: [cut.bore({ id: 'core', name: 'thread core', ...bore, from: mouth, steps: [{ to: shoulder, diameter: sized(core, { tolerance: deviations(3 * thou, 0) }) }] })], check: ['bore by gauge, depth to the shoulder by depth micrometer'] },
        { number: 50, title: 'Groove before the shoulder', setUp: 'A', cutter: { name: 'internal grooving tool', diameter: p.grooveWidth }, cuts: [cut.undercut({ id: 'groove', name: 'run-out for the thread', ...bore, from: groove, to: shoulder, diameter: sized(p.thread.major + p.grooveOver) })], check: ['carriage stop set on the shoulder; diameter by the cross slide'] },
        { number: 60, title: 'Chamfer the mouth', setUp: 'A', cutter: { name: 'boring tool set at 45°, or countersink' }, cuts: [cut.turnedChamfer({ id: 'mouth-chamfer', name: 'mouth of the thread', centre, at: mouth, outward: '-z', diameter: core, leg: sized(p.mouthChamfer), internal: true })], check: ['wider than the thread all round'] },
        {
          number: 70,
          title: tapped ? 'Tap the bore' : 'Screw-cut the bore',
          setUp: 'A',
          cutter: { name: tapped ? `taper, second and plug tap ${p.thread.designation}, in the tailstock` : `internal threading tool, ${p.thread.designation}, chuck turned by hand` },
          cuts: [cut.internalThread({ id: 'thread', name: 'bore', ...bore, from: mouth, to: groove, thread: threadSize(p.thread), core, method: p.threading })],
          check: ['the stuffing box, or a plug of its thread, screws home to the groove'],
          ...(p.thread.major < 5 && tapped ? { caution: ['small-tap'] } : {}),
        },
        { number: 80, title: 'Part off', setUp: 'A', cutter: { name: 'parting tool', diameter: parting.kerf }, cuts: [cut.face({ id: 'parting', name: 'the nut', verb: 'Part off', at: parted, side: '+z' })], check: ['metal is left to face the outer end'], caution: ['parting-off'] },
        { number: 90, title: 'Face the outer end to length', setUp: 'B', cutter: { name: 'facing tool' }, cuts: [cut.face({ id: 'outer-face', name: 'outer end', at: outer, side: '+z' })], check: ['length over all by micrometer'] },
        { number: 100, title: 'Chamfer the corners', setUp: 'B', cutter: { name: 'chamfer tool, 30°' }, cuts: [cut.cornerChamfer({ id: 'outer-corners', name: 'corners, outer end', ...corners, at: outer, outward: '+z' })], check: ['both ends alike'] },
      ],
      notes: [['Hexagon bar: the six flats stay as bought.'], ['Bore, groove and thread are cut in one holding, so that the rod runs true to the thread.']],
      cautions: ['eyes', 'pressure'],
      attitude: { kind: 'turned', front: '-x', up: '+y' },
      handAxis: 'x',
      hand: 'right',
      texture: 3.2,
    };
  },
});
