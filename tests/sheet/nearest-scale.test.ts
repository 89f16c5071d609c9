import { expect, it } from 'vitest';
import { nearestScale } from '../../engine/sheet/nearest-scale.js';

// By ratio: 3 is nearer to 4 (1.33 times) than to 2 (1.5 times).
it.each([
  ['3:1', '4:1'],
  ['1:3', '1:4'],
  ['1:50', '1:20'],
  ['1000:1', '50:1'],
  ['1 : 1', '1:1'],
  ['1/2', '1:2'],
  ['2', '2:1'],
  ['0:1', '50:1'],
  ['full', '1:1'],
])('%s is nearest to %s', (asked, nearest) => {
  expect(nearestScale(asked)).toBe(nearest);
});
