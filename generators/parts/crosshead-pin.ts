import { cutsIn, definePart, fit, roundStock, sized, stationBook, threadSize } from '../../engine/part/author/index.js';
import { pistonLoad } from '../../engine/part/loads.js';
import type { Relation } from '../../engine/part/relation.js';
import { centreDrillFor } from '../../engine/trade/centre-drills.js';
import type { Thread } from '../../engine/trade/threads.js';
import { tormentil } from '../engine.js';
import { crossheadAndPin } from '../mates/crosshead-and-pin.js';

/** The centre drill for both ends: by the mouth, of the system of the tail's thread. */
const centreDrillOf = (p: { readonly centreMouth: number; readonly tailThread: Thread }) => centreDrillFor(p.centreMouth, p.tailThread.series.startsWith('metric') ? 'iso' : 'american');

export default definePart({
  name: 'crosshead-pin',
  title: 'Crosshead pin',
  summary: 'Turned pin with a 90° taper head, a bearing body to a fit, an undercut and a thread; hardened and tempered.',
  parameters: {
    ...crossheadAndPin,
    headLand: { kind: 'clearance', label: 'parallel land of the head', default: '1/64 in', minimum: '0.005 in', maximum: '1/16 in' },
    bodyShort: { kind: 'clearance', label: 'body short of the far cheek', default: '1/32 in', minimum: '0.005 in', maximum: '1/8 in' },
    tailThread: { kind: 'thread', label: 'thread for the nut', default: '10-32', minimum: '0.06 in', maximum: '0.75 in' },
    tailLength: { kind: 'length', label: 'thread and undercut beyond the body', default: '5/16 in', minimum: '0.08 in', maximum: '1 in' },
    undercutWidth: { kind: 'length', label: 'width of the undercut', default: '1/16 in', minimum: '0.02 in', maximum: '1/4 in' },
    undercutBelow: { kind: 'clearance', label: 'undercut below the root of the thread, on diameter', default: '0.004 in', minimum: '0.002 in', maximum: '0.04 in' },
    tailChamfer: { kind: 'clearance', label: 'chamfer at the tail', default: '0.025 in', minimum: '0.005 in', maximum: '1/8 in', follows: 'edge' },
    centreMouth: { kind: 'length', label: 'mouth of the centre holes', default: '3/32 in', minimum: '0.03 in', maximum: '1/4 in' },
    barDiameter: { kind: 'stock', form: 'round', label: 'diameter of the bar', default: '7/16 in', minimum: '3/16 in', maximum: '2 in' },
    endAllowance: { kind: 'allowance', label: 'left on each end of the blank', default: '1/16 in', minimum: '0.02 in', maximum: '1/4 in' },
    gripLength: { kind: 'allowance', label: 'bar beyond the head, to hold it by', default: '5/8 in', minimum: '0.3 in', maximum: '3 in' },
  },
  loads: { engine: tormentil, checks: (p, engine) => [{ kind: 'shear', what: 'pin across', by: 'steam', force: pistonLoad(engine), material: 'silver steel', diameter: p.pinDiameter, planes: 2 }] },
  relations: (p): readonly Relation[] => {
    const length = (says: string, left: Relation['left'], is: Relation['is'], right: Relation['right']): Relation => ({ says, left, is, right, measure: 'length' });
    const root = p.tailThread.minorExternal - p.undercutBelow;
    const centreDrill = centreDrillOf(p);
    return [
      length('the head is larger than the body', { text: 'head diameter', value: p.headDiameter }, '>=', { text: 'pin diameter and 0.5 mm', value: p.pinDiameter + 0.5 }),
      length('the bar leaves a cut over the head', { text: 'bar diameter', value: p.barDiameter }, '>=', { text: 'head diameter and 0.4 mm', value: p.headDiameter + 0.4 }),
      length('the thread passes through the cross bore', { text: 'thread diameter', value: p.tailThread.major }, '<', { text: 'pin diameter', value: p.pinDiameter }),
      length('the tail has a thread beyond the undercut', { text: 'undercut, chamfer and three pitches', value: p.undercutWidth + p.tailChamfer + 3 * p.tailThread.pitch }, '<=', { text: 'tail length', value: p.tailLength }),
      length('the undercut leaves a sound neck', { text: 'undercut diameter', value: root }, '>=', { text: 'half the pin diameter', value: p.pinDiameter / 2 }),
      length('the centre holes fit the tail', { text: 'mouth of the centre holes', value: p.centreMouth }, '<=', { text: 'seven tenths of the undercut diameter', value: 0.7 * root }),
      length('the centre holes are wider than their pilot', { text: 'mouth of the centre holes', value: p.centreMouth }, '>', { text: 'pilot diameter', value: centreDrill.pilot }),
      length('the centre holes are no wider than their drill', { text: 'mouth of the centre holes', value: p.centreMouth }, '<=', { text: 'body of the centre drill', value: centreDrill.body }),
      length('the chamfer stays above the thread’s root', { text: 'tail chamfer', value: p.tailChamfer }, '<=', { text: 'two pitches', value: 2 * p.tailThread.pitch }),
      length('a bearing body is left', { text: 'head and shortening', value: p.headLand + (p.headDiameter - p.pinDiameter) / 2 + p.bodyShort }, '<', { text: 'half the body width', value: p.bodyWidth / 2 }),
    ];
  },
  build: (p) => {
    const at = stationBook();
    const across = at.datum('x', 'pin axis');
    const up = at.datum('y', 'pin axis');
    const head = at.datum('z', 'head face');
    const land = at.from(head, p.headLand, 'end of the head land', { purpose: 'size' });
    const taperEnd = at.derived(land, (p.headDiameter - p.pinDiameter) / 2, 'end of the taper', 'the head’s angle and the two diameters');
    const bodyEnd = at.from(head, p.bodyWidth + p.headLand - p.bodyShort, 'end of the body', { tolerance: { kind: 'deviations', upper: 0, lower: -4 * 0.0254 } });
    const undercutEnd = at.from(bodyEnd, p.undercutWidth, 'end of the undercut', { purpose: 'size' });
    const tail = at.from(bodyEnd, p.tailLength, 'tail end', { purpose: 'size' });
    const centre = [across, up] as const;
    const jaws = at.from(head, -p.endAllowance, 'jaws');
    const bar = at.from(jaws, -p.gripLength, 'end of the bar');
    const stock = roundStock({ along: 'z', centre, diameter: p.barDiameter, ends: [bar, tail.value + p.endAllowance] });
    const cut = cutsIn(stock);
    const root = p.tailThread.minorExternal - p.undercutBelow;
    const thread = threadSize(p.tailThread);
    const centreDrill = centreDrillOf(p);
    return {
      name: 'crosshead-pin',
      title: 'Crosshead pin',
      engine: 'Tormentil, 5 inch gauge',
      units: 'in',
      quantity: 2,
      material: {
        name: 'silver steel',
        treatment: ['Harden: cherry red (770 to 780 °C), quench upright in oil or water as the maker of the bar says; temper to dark straw (about 250 °C).'],
      },
      stock,
      stations: at.all(),
      setUps: [
        { id: 'A', machine: 'lathe', holding: 'three-jaw chuck or collet, tail end out, then the tailstock centre', grip: { kind: 'three-jaw chuck', between: [bar.id, jaws.id] }, up: '+z', right: '+y', zero: [tail.id] },
        { id: 'B', machine: 'lathe', holding: 'split bush on the body in the three-jaw chuck, head out', grip: { kind: 'three-jaw chuck', between: [taperEnd.id, bodyEnd.id] }, up: '-z', right: '+y', zero: [head.id] },
        { id: 'C', machine: 'bench', holding: 'hung on a wire by the undercut', up: '-z', right: '+y', zero: [] },
        { id: 'D', machine: 'lathe', holding: 'between centres', grip: { kind: 'between centres', between: [head.id, tail.id] }, up: '+z', right: '+y', zero: [] },
      ],
      operations: [
        { number: 10, title: 'Face the tail end', setUp: 'A', cutter: { name: 'facing tool' }, cuts: [cut.face({ id: 'tail-face', name: 'tail end', at: tail, side: '+z', clean: true })], caution: ['rotating-work', 'chuck-key'], check: ['a clean face by eye; lengths are taken from it with the caliper'] },
        { number: 20, title: 'Centre the tail end', setUp: 'A', cutter: { name: centreDrill.designation, diameter: centreDrill.body }, cuts: [cut.centreHole({ id: 'tail-centre', name: 'tail end', centre, at: tail, outward: '+z', drill: centreDrill, outside: p.centreMouth })], check: ['mouth of the centre hole by caliper'] },
        { number: 30, title: 'Turn the head diameter', setUp: 'A', cutter: { name: 'knife tool' }, cuts: [cut.turn({ id: 'head-diameter', name: 'head', axis: 'z', centre, from: tail, open: true, steps: [{ to: head, diameter: sized(p.headDiameter) }] })], check: ['a little past the head’s length, for parting off'] },
        { number: 40, title: 'Turn the bearing body', setUp: 'A', cutter: { name: 'knife tool' }, cuts: [cut.turn({ id: 'body', name: 'bearing body', axis: 'z', centre, from: tail, open: true, steps: [{ to: taperEnd, diameter: sized(p.pinDiameter, { tolerance: fit('g6', p.pinDiameter) }), texture: 0.8 }] })], leave: [{ length: 2 * 0.0254 }, ' on diameter for operation 130'], check: ['micrometer at both ends: no taper'] },
        { number: 50, title: 'Turn the thread diameter', setUp: 'A', cutter: { name: 'knife tool' }, cuts: [cut.turn({ id: 'tail', name: 'tail', axis: 'z', centre, from: tail, open: true, steps: [{ to: bodyEnd, diameter: sized(p.tailThread.major, { purpose: 'size' }), unsaid: true }] })], check: ['diameter by micrometer, no more than the thread’s own'] },
        { number: 60, title: 'Cut the undercut', setUp: 'A', cutter: { name: 'parting tool, ground to width', diameter: p.undercutWidth }, cuts: [cut.turn({ id: 'undercut', name: 'undercut', verb: 'Groove', axis: 'z', centre, from: undercutEnd, steps: [{ to: bodyEnd, diameter: sized(root) }] })], check: ['width by a slip of the nut’s thickness or a feeler, neck by caliper'] },
        { number: 70, title: 'Chamfer the tail', setUp: 'A', cutter: { name: 'chamfer tool' }, cuts: [cut.turnedChamfer({ id: 'tail-chamfer', name: 'tail', centre, at: tail, outward: '+z', diameter: p.tailThread.major, leg: sized(p.tailChamfer) })], check: ['the nut starts by hand'] },
        { number: 80, title: 'Thread the tail', setUp: 'A', cutter: { name: `die ${p.tailThread.designation} in the tailstock holder` }, cuts: [cut.externalThread({ id: 'tail-thread', name: 'tail', centre, from: tail, to: undercutEnd, thread, root: p.tailThread.minorExternal })], check: ['the nut runs down to the undercut'] },
        { number: 90, title: 'Turn the taper head', setUp: 'A', cutter: { name: 'knife tool, top slide at 45°' }, cuts: [cut.turn({ id: 'taper', name: 'taper head', axis: 'z', centre, from: land, steps: [{ to: taperEnd, diameter: sized(p.headDiameter), taperTo: p.pinDiameter, texture: 1.6 }] })], check: ['blue against the seat in the crosshead'] },
        { number: 100, title: 'Part off, face the head', setUp: 'B', cutter: { name: 'facing tool' }, cuts: [cut.face({ id: 'head-face', name: 'head', at: head, side: '-z' })], check: ['length of the land'], caution: ['parting-off'] },
        { number: 110, title: 'Centre the head', setUp: 'B', cutter: { name: centreDrill.designation, diameter: centreDrill.body }, cuts: [cut.centreHole({ id: 'head-centre', name: 'head', centre, at: head, outward: '-z', drill: centreDrill, outside: p.centreMouth })], check: ['mouth of the centre hole by caliper'] },
        { number: 120, title: 'Harden and temper', setUp: 'C', cutter: { name: 'hearth and quench' }, cuts: [], check: ['a file slides off the body before tempering'], caution: ['heat-treatment', 'oil-quench'] },
        { number: 130, title: 'Lap the body to size', setUp: 'D', cutter: { name: 'lap, or fine stone' }, cuts: [], check: ['a running fit in the rod bush, no shake'] },
      ],
      notes: [['The cross bore of the crosshead is made to this pin.']],
      cautions: ['eyes'],
      attitude: { kind: 'turned', front: '-x', up: '+y' },
      handAxis: 'x',
      hand: 'right',
      texture: 1.6,
    };
  },
});
