import { describe, expect, it } from 'vitest';
import { makePrintsOf } from '../support/print.js';

/** A print and its mirror image say the same in the same room: where one finds a scale, so does the other. */
describe('the prints of both hands', () => {
  it.each(['expansion-link', 'valve-rod-fork', 'connecting-rod'])('of the %s are as large, on as many sheets of one paper', async (name) => {
    const [right, left] = await makePrintsOf(name, { paper: undefined });
    expect([left!.record.scale, left!.record.paper, left!.record.sheets.length]).toEqual([right!.record.scale, right!.record.paper, right!.record.sheets.length]);
  });
});
