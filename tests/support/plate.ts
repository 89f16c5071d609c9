import type { TaggedForm } from '../../engine/solid/tagged-form.js';
import { block, rod, worldFrame } from './forms.js';

/** Stock and holes of a plate 6 mm thick with `count` holes of 4 mm diameter through it, 10 mm apart in a square array. */
export function plateWithHoles(count: number): { stock: TaggedForm[]; removed: TaggedForm[] } {
  const row = Math.ceil(Math.sqrt(count));
  const removed = Array.from({ length: count }, (_, i): TaggedForm => {
    const x = 10 * (i % row) + 5;
    const y = 10 * Math.floor(i / row) + 5;
    return { cut: `hole${i + 1}`, form: rod({ ...worldFrame, origin: [x, y, 0] }, 2, -1, 7) };
  });
  const stock = [{ cut: 'stock', form: block([0, 0, 0], [10 * row, 10 * Math.ceil(count / row), 6]) }];
  return { stock, removed };
}
