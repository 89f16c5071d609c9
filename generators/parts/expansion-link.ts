import { cutsIn, definePart, fit, plusMinus, rectangularStock, sized, stationBook, type HoleCut } from '../../engine/part/author/index.js';
import { expansionLinkLoads } from './expansion-link/loads.js';
import { expansionLinkParameters } from './expansion-link/parameters.js';
import { expansionLinkRelations } from './expansion-link/relations.js';
import { sagAt } from './expansion-link/sag.js';

/** Thousandths of an inch, in mm. */
const thou = 0.0254;

export default definePart({
  name: 'expansion-link',
  title: 'Expansion link',
  summary: 'Valve-gear link: curved slot for the die block, countersunk bracket holes, tail pin hole; hardened and lapped.',
  parameters: expansionLinkParameters,
  relations: expansionLinkRelations,
  loads: expansionLinkLoads,
  build: (p) => {
    const at = stationBook();
    const inner = at.datum('x', 'inner face');
    const outer = at.from(inner, p.thickness, 'outer face', { purpose: 'size' });
    const trunnion = at.datum('y', 'trunnion line');
    const middle = at.datum('z', 'middle of the slot');
    const ends = at.pair(trunnion, p.slotLength, 'middles of the slot’s ends', { tolerance: plusMinus(2 * thou) });
    const [bracketLow, bracketHigh] = at.pair(trunnion, p.bracketSpan, 'bracket holes', { tolerance: plusMinus(thou) });
    const tail = at.from(trunnion, -p.tailDrop, 'tail pin', { tolerance: plusMinus(thou) });
    // All holes stand on the slot's middle line: its radius says where, and nothing more is set.
    const onLine = (height: number, name: string) => at.derived(middle, -sagAt(p.radius, height), name, 'the radius of the slot');
    const bracketBack = onLine(p.bracketSpan / 2, 'slot’s middle line at the bracket holes');
    const tailBack = onLine(p.tailDrop, 'slot’s middle line at the tail pin');

    const width = 2 * p.endRadius + sagAt(p.radius, p.tailDrop);
    const spare = (p.barWidth - width) / 2;
    const stock = rectangularStock({
      along: 'y',
      x: [inner, outer],
      y: [tail.value - p.endRadius - p.endAllowance, bracketHigh.value + p.endRadius + p.endAllowance],
      z: [p.endRadius - width - spare, p.endRadius + spare],
    });
    const cut = cutsIn(stock);
    const arc = { middle: [trunnion, middle], toCentre: '-z', tool: '-x' } as const;
    const band = { ...arc, ends: [tail, bracketHigh] } as const;
    const bracketHoles: HoleCut = {
      id: 'bracket-holes',
      name: 'bracket holes',
      entry: outer,
      direction: '-x',
      at: [[bracketHigh, bracketBack], [bracketLow, bracketBack]],
      diameter: sized(p.bracketHole, { tolerance: fit('H7', p.bracketHole) }),
      finish: 'reamed',
    };
    const tailHole: HoleCut = {
      id: 'tail-hole',
      name: 'tail pin hole',
      entry: outer,
      direction: '-x',
      at: [[tail, tailBack]],
      diameter: sized(p.tailHole, { tolerance: fit('H7', p.tailHole) }),
      finish: 'reamed',
      texture: 0.8,
    };
    const end = (which: 'low' | 'high', name: string) => cut.arcEnd({ ...band, id: `${which}-end`, name, arcRadius: p.radius, radius: sized(p.endRadius), end: which });
    const flat = { up: '+x', right: '-z', zero: [trunnion.id, middle.id, outer.id] } as const;

    return {
      name: 'expansion-link',
      title: 'Expansion link',
      engine: 'Tormentil, 5 inch gauge',
      units: 'in',
      quantity: 1,
      material: { name: 'gauge plate (O1), ground', trade: 'gauge plate', treatment: ['harden in oil from 790 to 815 °C, temper to light straw; lap the slot'] },
      stock,
      stations: at.all(),
      setUps: [
        { id: 'A', machine: 'mill', holding: 'clamps on parallels, outer face up, true along the plate', grip: { kind: 'clamps', between: [inner.id, outer.id] }, ...flat },
        {
          id: 'B',
          machine: 'mill',
          holding: 'swing plate, on pins in the tail and bracket holes, screwed down; the plate turns about a pivot pin',
          grip: { kind: 'fixture', between: [inner.id, outer.id] },
          ...flat,
        },
        { id: 'C', machine: 'mill', holding: 'turntable, on a pin through the hole at that end, clamped', grip: { kind: 'fixture', between: [inner.id, outer.id] }, ...flat },
        { id: 'D', machine: 'bench', holding: 'hung by a wire through the tail pin hole; then flat on the bench', up: '+x', right: '-z', zero: [] },
      ],
      operations: [
        {
          number: 10,
          title: 'Drill and ream the tail pin hole',
          setUp: 'A',
          cutter: { name: 'drill under size, then reamer', diameter: p.tailHole },
          cuts: [cut.hole(tailHole)],
          check: ['plug gauge; the swing plate’s own pin'],
        },
        {
          number: 20,
          title: 'Drill and ream the bracket holes',
          setUp: 'A',
          cutter: { name: 'drill under size, then reamer', diameter: p.bracketHole },
          cuts: [cut.hole(bracketHoles)],
          check: ['over plugs in the two holes, and to the tail pin hole, by micrometer'],
        },
        {
          number: 30,
          title: 'Mill the curved slot',
          setUp: 'B',
          cutter: { name: 'slot drill under size, then the size of the slot', diameter: p.slotWidth },
          cuts: [cut.arcSlot({ ...arc, id: 'slot', name: 'curved slot', radius: sized(p.radius, { purpose: 'functional', tolerance: plusMinus(2 * thou) }), width: sized(p.slotWidth, { purpose: 'functional', tolerance: fit('H8', p.slotWidth) }), ends, entry: outer, also: 'holes', texture: 0.8 })],
          leave: [{ length: thou / 2 }, ' on each wall for the lap'],
          check: ['width by plug gauge along its whole length; radius by a template or by the die block'],
          caution: ['clamping', 'dimension-check'],
        },
        {
          number: 40,
          title: 'Mill the two sides',
          setUp: 'B',
          cutter: { name: 'end mill', diameter: 9.525 },
          cuts: [cut.arcSides({ ...band, id: 'sides', name: 'curved sides', radius: sized(p.radius), half: p.endRadius, concentricWith: 'slot' })],
          leave: [{ length: 5 * thou }, ' for the last pass'],
          check: ['both rails alike, by caliper from the slot'],
        },
        {
          number: 50,
          title: 'Round the ends',
          setUp: 'C',
          cutter: { name: 'end mill', diameter: 9.525 },
          cuts: [end('low', 'tail end'), end('high', 'upper end')],
          check: ['the round runs into both sides; by radius gauge'],
        },
        {
          number: 60,
          title: 'Countersink the bracket holes',
          setUp: 'A',
          cutter: { name: '90° countersink' },
          cuts: [cut.countersink({ id: 'screw-seats', name: 'seats of the bracket screws', holes: bracketHoles, diameter: sized(p.screwHead), angle: 90 })],
          check: ['mark OUTER on this face and the hand first; a screw head lies just under the face'],
        },
        {
          number: 70,
          title: 'Harden, temper',
          setUp: 'D',
          cutter: { name: 'hearth or muffle; oil bath; clean bright face to see the colour' },
          cuts: [],
          check: ['a fine file slides on the edge; flat on a surface plate'],
          caution: ['heat-treatment', 'oil-quench', 'eyes'],
        },
        {
          number: 80,
          title: 'Lap the slot to the die block',
          setUp: 'D',
          cutter: { name: 'flat copper lap of the slot’s width, fine paste, then washed clean' },
          cuts: [],
          check: ['the die block slides from end to end without shake or tight place'],
        },
      ],
      notes: [['The bracket lies on the inner face; its screw heads lie flush in the outer.'], ['Swing the die block from the same pivot.']],
      cautions: ['sharp-edges', 'eyes'],
      attitude: { kind: 'milled', front: '+x', up: '+y' },
      handAxis: 'x',
      hand: 'right',
      texture: 1.6,
    };
  },
});
