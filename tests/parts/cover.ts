import { cutsIn, definePart, fit, roundStock, sized, stationBook } from '../../engine/part/author/index.js';

/** A turned cover with a register, a bore, a ring of screw holes and a hole that leans: for tests of half sections and circles. */
export default definePart({
  name: 'cover',
  title: 'Valve chest cover',
  summary: 'Flanged cover with register, bored and drilled on a pitch circle.',
  parameters: {
    flange: { kind: 'length', label: 'flange diameter', default: '40 mm', minimum: '20 mm', maximum: '100 mm' },
    boss: { kind: 'length', label: 'boss diameter', default: '18 mm', minimum: '8 mm', maximum: '60 mm' },
    bore: { kind: 'length', label: 'bore', default: '8 mm', minimum: '3 mm', maximum: '30 mm' },
    screws: { kind: 'count', label: 'screws', default: 6, minimum: 3, maximum: 12 },
    circle: { kind: 'length', label: 'pitch circle of the screws', default: '32 mm', minimum: '15 mm', maximum: '90 mm' },
  },
  relations: () => [],
  build: (p) => {
    const at = stationBook();
    const x = at.datum('x', 'axis');
    const y = at.datum('y', 'axis');
    const joint = at.datum('z', 'joint face');
    const back = at.from(joint, 5, 'back of the flange');
    const end = at.from(joint, 16, 'end of the boss');
    const register = at.from(joint, -2, 'face of the register', { purpose: 'size' });
    const counter = at.from(end, -6, 'bottom of the gland recess', { purpose: 'size' });
    const drain = at.from(y, -p.circle / 2 + 2.4, 'drain');
    const centre = [x, y] as const;
    const stock = roundStock({ along: 'z', centre, diameter: p.flange + 2, ends: [register.value - 1, end.value + 1] });
    const cut = cutsIn(stock);
    return {
      name: 'cover',
      title: 'Valve chest cover',
      engine: 'Tormentil, 5 inch gauge',
      units: 'mm',
      quantity: 1,
      material: { name: 'gunmetal' },
      stock,
      stations: at.all(),
      setUps: [
        { id: 'A', machine: 'lathe', holding: 'three-jaw chuck', grip: { kind: 'three-jaw chuck', between: [joint.id, back.id] }, up: '+z', right: '+y', zero: [joint.id] },
        { id: 'B', machine: 'lathe', holding: 'soft jaws on the boss', grip: { kind: 'three-jaw chuck', between: [back.id, end.id] }, up: '-z', right: '+y', zero: [joint.id] },
        { id: 'C', machine: 'drill', holding: 'vice on the boss', grip: { kind: 'fixture', between: [end.id, joint.id] }, up: '-z', right: '+x', zero: [x.id, y.id, joint.id] },
      ],
      operations: [
        {
          number: 10,
          title: 'Turn the boss',
          setUp: 'A',
          cutter: { name: 'knife tool' },
          cuts: [
            cut.face({ id: 'end', name: 'boss', at: end, side: '+z' }),
            cut.turn({ id: 'boss', name: 'boss', axis: 'z', centre, from: end, open: true, steps: [{ to: back, diameter: sized(p.boss), fillet: 1 }] }),
          ],
        },
        {
          number: 20,
          title: 'Bore',
          setUp: 'A',
          cutter: { name: 'boring tool' },
          cuts: [cut.bore({ id: 'bore', name: 'bore', axis: 'z', centre, from: end, steps: [{ to: counter, diameter: sized(p.bore + 4, { tolerance: fit('H8', p.bore + 4) }) }] }), cut.hole({ id: 'rod', name: 'rod hole', entry: end, direction: '-z', at: [[x, y]], diameter: sized(p.bore, { tolerance: fit('H7', p.bore) }), finish: 'bored', texture: 0.8 })],
        },
        {
          number: 30,
          title: 'Turn flange and register',
          setUp: 'B',
          cutter: { name: 'knife tool' },
          cuts: [
            cut.face({ id: 'register-face', name: 'register', at: register, side: '-z' }),
            cut.turn({ id: 'register', name: 'register', axis: 'z', centre, from: register, open: true, steps: [{ to: joint, diameter: sized(24, { tolerance: fit('h7', 24) }) }, { to: back, diameter: sized(p.flange) }] }),
          ],
        },
        {
          number: 40,
          title: 'Drill the screw holes',
          setUp: 'C',
          cutter: { name: 'drill 3.2 mm', diameter: 3.2 },
          cuts: [cut.hole({ id: 'screws', name: 'screw holes', entry: joint, direction: '+z', at: [], circle: { centre, diameter: sized(p.circle), count: p.screws, start: 30, zero: '+x' }, diameter: sized(3.2), tool: '3.2 mm' })],
        },
        {
          number: 50,
          title: 'Drill the drain',
          setUp: 'C',
          cutter: { name: 'drill 2 mm', diameter: 2 },
          cuts: [cut.hole({ id: 'drain', name: 'drain', entry: joint, direction: '+z', tilt: { toward: '-y', angle: 30 }, at: [[x, drain]], diameter: sized(2), depth: sized(4) })],
        },
      ],
      notes: [],
      cautions: ['pressure'],
      attitude: { kind: 'turned', front: '-x', up: '+y' },
      handAxis: 'x',
      hand: 'right',
      texture: 3.2,
    };
  },
});
