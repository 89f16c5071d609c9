import { cutsIn, roundStock, sized, stationBook } from '../../../engine/part/author/index.js';
import type { Part } from '../../../engine/part/part.js';

/**
 * Round bar 30 x 40 of mild steel, bored (20 unless said) in the first set-up and faced at the other end in the second; held
 * in both between two places along it.
 */
export function ring({ grip, bore = 0, holding = 'three-jaw chuck' }: { readonly grip: readonly [number, number]; readonly bore?: number; readonly holding?: string }): Part {
  const book = stationBook();
  const centre = [book.datum('x', 'axis'), book.datum('y', 'axis')] as const;
  const back = book.datum('z', 'back');
  const front = book.from(back, 40, 'front');
  const [from, to] = [book.from(back, grip[0], 'jaws from'), book.from(back, grip[1], 'jaws to')];
  const stock = roundStock({ along: 'z', centre, diameter: 30, ends: [back, book.from(back, 42, 'end of the bar')] });
  const cut = cutsIn(stock);
  const setUp = (id: string) => ({ id, machine: 'lathe' as const, holding, grip: { kind: 'three-jaw chuck' as const, between: [from.id, to.id] as const }, up: '+z' as const, right: '+y' as const, zero: [front.id] });
  const bored = bore === 0 ? [] : [cut.hole({ id: 'bore', name: 'bore', entry: front, direction: '-z' as const, at: [centre], diameter: sized(bore), finish: 'bored' as const })];
  return {
    name: 'ring',
    title: 'Ring',
    engine: 'trial',
    units: 'mm',
    quantity: 1,
    material: { name: 'mild steel' },
    stock,
    stations: book.all(),
    setUps: [setUp('A'), setUp('B')],
    operations: [
      { number: 10, title: 'Bore', setUp: 'A', cutter: { name: 'boring tool' }, cuts: bored },
      { number: 20, title: 'Face', setUp: 'B', cutter: { name: 'facing tool' }, cuts: [cut.face({ id: 'front', name: 'front', at: front, side: '+z' })] },
    ],
    notes: [],
    cautions: [],
    attitude: { kind: 'turned', front: '-x', up: '+y' },
    handAxis: 'x',
    hand: 'right',
    texture: 3.2,
  };
}
