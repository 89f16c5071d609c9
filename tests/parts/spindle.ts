import { cutsIn, definePart, fit, roundStock, sized, stationBook, threadSize } from '../../engine/part/author/index.js';

/** A long plain spindle with a thread at one end: for tests of views with the middle left out. */
export default definePart({
  name: 'spindle',
  title: 'Valve spindle',
  summary: 'Long plain spindle with a threaded end and a flat.',
  parameters: {
    length: { kind: 'length', label: 'length', default: '120 mm', minimum: '20 mm', maximum: '400 mm' },
    diameter: { kind: 'length', label: 'diameter', default: '4 mm', minimum: '2 mm', maximum: '20 mm' },
    thread: { kind: 'thread', label: 'thread', default: 'M3', minimum: '1 mm', maximum: '12 mm' },
  },
  relations: (p) => [{ says: 'the thread is no larger than the spindle', left: { text: 'thread', value: p.thread.major }, is: '<=', right: { text: 'diameter', value: p.diameter }, measure: 'length' }],
  build: (p) => {
    const at = stationBook();
    const x = at.datum('x', 'axis');
    const y = at.datum('y', 'axis');
    const end = at.datum('z', 'plain end');
    const tail = at.from(end, p.length, 'threaded end', { purpose: 'overall' });
    const shoulder = at.from(tail, -12, 'shoulder', { purpose: 'size' });
    const flat = at.from(y, p.diameter / 2 - 0.8, 'flat');
    const flatEnd = at.from(end, 10, 'end of the flat', { purpose: 'size' });
    const centre = [x, y] as const;
    const stock = roundStock({ along: 'z', centre, diameter: p.diameter + 1, ends: [-1, tail.value + 1] });
    const cut = cutsIn(stock);
    return {
      name: 'spindle',
      title: 'Valve spindle',
      engine: 'Tormentil, 5 inch gauge',
      units: 'mm',
      quantity: 2,
      material: { name: 'stainless steel' },
      stock,
      stations: at.all(),
      setUps: [
        { id: 'A', machine: 'lathe', holding: 'collet', grip: { kind: 'collet', between: [end.id, flatEnd.id] }, up: '+z', right: '+y', zero: [end.id] },
        { id: 'B', machine: 'mill', holding: 'V-block', grip: { kind: 'fixture', between: [y.id, flat.id] }, up: '+y', right: '+z', zero: [end.id, y.id] },
      ],
      operations: [
        { number: 10, title: 'Face', setUp: 'A', cutter: { name: 'facing tool' }, cuts: [cut.face({ id: 'a', name: 'threaded end', at: tail, side: '+z' }), cut.face({ id: 'b', name: 'plain end', at: end, side: '-z' })] },
        { number: 20, title: 'Turn', setUp: 'A', cutter: { name: 'knife tool' }, cuts: [cut.turn({ id: 'body', name: 'body', axis: 'z', centre, from: tail, open: true, steps: [{ to: shoulder, diameter: sized(p.thread.major), unsaid: true }, { to: end, diameter: sized(p.diameter, { tolerance: fit('h6', p.diameter) }), texture: 0.8 }] })] },
        { number: 30, title: 'Thread', setUp: 'A', cutter: { name: `die ${p.thread.designation}` }, cuts: [cut.externalThread({ id: 'thread', name: 'end', centre, from: tail, to: shoulder, thread: threadSize(p.thread, '6g'), root: p.thread.minorExternal })] },
        { number: 40, title: 'Mill the flat', setUp: 'B', cutter: { name: 'end mill' }, cuts: [cut.pocket({ id: 'flat', name: 'flat', tool: '-y', x: ['open', 'open'], y: [flat, 'open'], z: ['open', flatEnd] })] },
      ],
      notes: [],
      cautions: [],
      attitude: { kind: 'turned', front: '-x', up: '+y' },
      handAxis: 'x',
      hand: 'right',
      texture: 1.6,
    };
  },
});
