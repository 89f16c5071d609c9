import { cutsIn, definePart, rectangularStock, sized, stationBook } from '../../engine/part/author/index.js';

/** A plate with many holes in no order, of a material that no table has: for tests of long lists of settings. */
export default definePart({
  name: 'sieve',
  title: 'Strainer plate',
  summary: 'Plate with holes along a spiral.',
  parameters: { count: { kind: 'count', label: 'holes', default: 60, minimum: 1, maximum: 90 } },
  relations: () => [],
  build: (p) => {
    const at = stationBook();
    const x = at.datum('x', 'middle');
    const y = at.datum('y', 'middle');
    const top = at.datum('z', 'upper face');
    const under = at.from(top, -2, 'lower face', { purpose: 'overall' });
    const stock = rectangularStock({ along: 'x', x: [-40, 40], y: [-40, 40], z: [under, top] });
    const cut = cutsIn(stock);
    const holes = Array.from({ length: p.count }, (_, i) => {
      const [angle, radius] = [2.4 * i, 3.5 * Math.sqrt(i + 1)];
      return [at.from(x, radius * Math.cos(angle), `hole ${i + 1}`), at.from(y, radius * Math.sin(angle), `hole ${i + 1}`)] as const;
    });
    return {
      name: 'sieve',
      title: 'Strainer plate',
      engine: 'Tormentil, 5 inch gauge',
      units: 'mm',
      quantity: 1,
      material: { name: 'old church bell' },
      stock,
      stations: at.all(),
      setUps: [{ id: 'A', machine: 'mill', holding: 'clamps on a board', grip: { kind: 'clamps', between: [under.id, top.id] }, up: '+z', right: '+x', zero: [x.id, y.id, top.id] }],
      operations: [
        {
          number: 10,
          title: 'Drill the holes',
          setUp: 'A',
          cutter: { name: 'drill 1.5 mm', diameter: 1.5 },
          cuts: [cut.hole({ id: 'holes', name: 'holes', entry: top, direction: '-z', at: holes, diameter: sized(1.5), tool: '1.5 mm' })],
        },
      ],
      notes: [],
      cautions: [],
      attitude: { kind: 'milled', front: '-y', up: '+z' },
      handAxis: 'x',
      hand: 'right',
      texture: 3.2,
    };
  },
});
