import { describe, expect, it } from 'vitest';
import { stationBook, type StationBook } from '../../engine/part/author/stations.js';
import type { Axis } from '../../engine/part/station.js';
import { chooseDimensions, unsettled } from '../../engine/sheet/dimension/choose.js';
import { axisProblem, type AxisProblem } from '../../engine/sheet/dimension/equations.js';
import { row, RowSpace } from '../../engine/sheet/dimension/row-space.js';
import { shownStations } from '../../engine/sheet/dimension/shown-stations.js';
import { solidOf } from '../../engine/solid/build.js';
import { loadKernel } from '../../engine/solid/kernel.js';
import { builtInPart } from '../support/built-in-part.js';
import { printedParts } from '../support/print.js';

const free = () => 0;

function problemOf(tell: (at: StationBook) => void): AxisProblem {
  const at = stationBook();
  tell(at);
  const stations = at.all();
  return axisProblem('x', stations, new Set(stations.map(({ id }) => id)));
}

const idsOf = (problem: AxisProblem): string[] => chooseDimensions(problem, free).dimensions.map(({ id }) => id).sort();

describe('distances along an axis', () => {
  it('settle a symmetrical pair by its width alone', () => {
    const problem = problemOf((at) => at.pair(at.datum('x', 'middle'), 10, 'cheeks'));
    expect(idsOf(problem)).toEqual(['x cheeks to cheeks']);
    expect(chooseDimensions(problem, free).proof).toMatchObject({ coordinates: 3, implied: 1, printed: 1, rank: 2, complete: true, single: true });
  });

  it('settle a row by its first place and one pitch that stands for all', () => {
    const problem = problemOf((at) => at.row(at.from(at.datum('x', 'face'), 5, 'screw 1'), 8, 4, 'screw'));
    const { dimensions, proof } = chooseDimensions(problem, free);
    expect(dimensions.map(({ id, repeats }) => [id, repeats])).toEqual([
      ['x screw 1 to screw 2', 3],
      ['x face to screw 1', undefined],
    ]);
    expect(proof).toMatchObject({ coordinates: 5, implied: 2, printed: 2, complete: true, single: true });
  });

  it('print nothing for what other sizes put in its place', () => {
    const problem = problemOf((at) => at.derived(at.from(at.datum('x', 'face'), 3, 'land'), 1.5, 'end of the taper', 'angle and diameters'));
    expect(idsOf(problem)).toEqual(['x face to land']);
  });

  it('put functional sizes before all others that say the same', () => {
    const problem = problemOf((at) => {
      const face = at.datum('x', 'face');
      const shoulder = at.from(face, 12, 'shoulder');
      at.from(face, 20, 'end', { purpose: 'overall' });
      at.from(shoulder, 8, 'end again', { tolerance: { kind: 'plus-minus', value: 0.02 } });
    });
    expect(idsOf(problem)).toEqual(['x face to shoulder', 'x shoulder to end again']);
  });

  it('name stations at one coordinate once', () => {
    const problem = problemOf((at) => {
      const face = at.datum('x', 'face');
      at.from(face, 12, 'shoulder');
      at.from(face, 12, 'bottom of the bore');
    });
    expect(problem.nodes).toHaveLength(2);
    expect(idsOf(problem)).toHaveLength(1);
  });

  it('leave out what no view can show, and say which coordinate stays open', () => {
    const problem = problemOf((at) => {
      const face = at.datum('x', 'face');
      at.from(face, 12, 'shoulder');
      at.from(face, 20, 'end');
    });
    const chosen = chooseDimensions(problem, ({ dimension }) => (dimension.to.name === 'end' || dimension.from.name === 'end' ? Infinity : 0));
    expect(chosen.proof).toMatchObject({ complete: false, single: true });
    expect(unsettled(problem, chosen.dimensions)).toEqual(['end']);
  });
});

const kernel = await loadKernel();
const cases = await Promise.all(
  printedParts.map(async (name) => {
    const part = await builtInPart(name);
    return { part, shown: shownStations(part, solidOf(kernel, part)) };
  }),
);

describe.each(cases.flatMap(({ part, shown }) => (['x', 'y', 'z'] as const).map((axis) => [part.name, axis, axisProblem(axis, part.stations, shown)] as const)))(
  'the distances of the %s along %s',
  (_, __: Axis, problem) => {
    const chosen = chooseDimensions(problem, free);
    const nodeOf = (station: string): string => problem.nodes.find((node) => node.stations.some(({ id }) => id === station))!.id;
    const rowOf = ({ from, to }: { readonly from: { readonly id: string }; readonly to: { readonly id: string } }) => row([nodeOf(to.id), 1], [nodeOf(from.id), -1]);
    const spaceOf = (left: number | undefined): RowSpace => {
      const space = new RowSpace();
      for (const each of problem.implied) space.add(each.row);
      chosen.dimensions.forEach((each, i) => i !== left && space.add(rowOf(each)));
      return space;
    };

    it('settle every coordinate', () => {
      expect(spaceOf(undefined).rank).toBe(Math.max(0, problem.nodes.length - 1));
      expect(unsettled(problem, chosen.dimensions)).toEqual([]);
    });

    it('need each one: without it a coordinate stays open', () => {
      chosen.dimensions.forEach((each, i) => {
        expect([each.id, spaceOf(i).rank]).toEqual([each.id, problem.nodes.length - 2]);
        expect(unsettled(problem, chosen.dimensions.filter((other) => other !== each))).not.toEqual([]);
      });
    });

    it('leave nothing to add: any further distance follows from them', () => {
      const space = spaceOf(undefined);
      for (const a of problem.nodes) for (const b of problem.nodes) expect(space.spans(row([a.id, 1], [b.id, -1]))).toBe(true);
    });

    it('hold every functional size', () => {
      const functional = problem.candidates.filter(({ dimension }) => dimension.size.purpose === 'functional');
      for (const { dimension } of functional) expect(chosen.dimensions.map(({ id }) => id)).toContain(dimension.id);
    });

    it('cost no more than any other complete set that swaps one for another', () => {
      const cost = new Map([...problem.candidates].sort((a, b) => b.cost - a.cost).map((each) => [each.dimension.id, each.cost]));
      chosen.dimensions.forEach((each, i) => {
        const space = spaceOf(i);
        for (const other of problem.candidates) if (!space.spans(other.row)) expect(other.cost).toBeGreaterThanOrEqual(cost.get(each.id)!);
      });
    });

    it('agree with the values of the stations', () => {
      for (const { dimension } of problem.candidates)
        expect([dimension.id, Math.abs(dimension.to.value - dimension.from.value)]).toEqual([dimension.id, expect.closeTo(dimension.size.value, 9)]);
    });
  },
);
