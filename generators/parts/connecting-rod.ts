import { cutsIn, definePart, fit, plusMinus, rectangularStock, sized, stationBook, type Direction, type HoleCut, type SetUp } from '../../engine/part/author/index.js';
import { connectingRodLoads } from './connecting-rod/loads.js';
import { connectingRodParameters } from './connecting-rod/parameters.js';
import { connectingRodRelations } from './connecting-rod/relations.js';

/** Thousandths of an inch, in mm. */
const thou = 0.0254;

export default definePart({
  name: 'connecting-rod',
  title: 'Connecting rod',
  summary: 'Main rod: round bushed ends, fluted on the outer side or on both, oil holes; the bores are the datum of all else.',
  parameters: connectingRodParameters,
  relations: connectingRodRelations,
  loads: connectingRodLoads,
  build: (p) => {
    const at = stationBook();
    const middle = at.datum('x', 'middle of the thickness');
    const [inner, outer] = at.pair(middle, p.thickness, ['inner face', 'outer face']);
    const line = at.datum('y', 'line of the bores');
    const big = at.datum('z', 'big end');
    const small = at.from(big, p.centres, 'little end', { purpose: 'functional', tolerance: plusMinus(thou) });
    const [lowerEdge, upperEdge] = at.pair(line, p.shankHeight, 'edges of the shank');
    const fluteWalls = at.pair(line, p.fluteWidth, 'walls of the flute');
    const fluteEnds = [at.from(big, p.fluteFromBig, 'start of the flute'), at.from(small, -p.fluteFromSmall, 'end of the flute')] as const;
    const floor = at.from(outer, -p.fluteDepth, 'floor of the flute', { tolerance: plusMinus(3 * thou) });
    const both = p.fluted === 'both sides';
    const innerFloor = both ? at.from(inner, p.fluteDepth, 'floor of the inner flute', { tolerance: plusMinus(3 * thou) }) : undefined;
    const bigTop = at.derived(line, p.bigRadius, 'top of the big end', 'the radius of the big end');
    const smallTop = at.derived(line, p.smallRadius, 'top of the little end', 'the radius of the little end');

    const stock = rectangularStock({
      along: 'z',
      x: [inner, outer],
      y: [-p.barWidth / 2, p.barWidth / 2],
      z: [-p.bigRadius - p.endAllowance, p.centres + p.smallRadius + p.endAllowance],
    });
    const cut = cutsIn(stock);
    const bore = (id: string, name: string, place: typeof big, diameter: number, finish: 'bored' | 'reamed'): HoleCut => ({
      id,
      name,
      entry: outer,
      direction: '-x',
      at: [[line, place]],
      diameter: sized(diameter, { tolerance: fit('H7', diameter), purpose: 'functional' }),
      finish,
      texture: 1.6,
    });
    const bigBore = bore('big-bore', 'big end', big, p.bigBore, 'bored');
    const smallBore = bore('small-bore', 'little end', small, p.smallBore, 'reamed');
    const oil = (id: string, name: string, top: typeof bigTop, place: typeof big): HoleCut => ({
      id,
      name,
      entry: top,
      direction: '-y',
      at: [[middle, place]],
      diameter: sized(p.oilHole.diameter),
      tool: p.oilHole.name,
      into: { station: line, name: 'bore' },
    });
    const bigOil = oil('big-oil', 'oil hole of the big end', bigTop, big);
    const smallOil = oil('small-oil', 'oil hole of the little end', smallTop, small);
    const cup = (holes: HoleCut) => cut.countersink({ id: `${holes.id}-cup`, name: `cup of the ${holes.name}`, holes, diameter: sized(p.oilCup), angle: 90 });
    const bosses = [{ centre: [line, big], radius: p.bigRadius }, { centre: [line, small], radius: p.smallRadius }] as const;
    const shank = (id: 'upper' | 'lower') =>
      cut.betweenBosses({ id: `${id}-edge`, name: `${id} edge`, axis: 'x', bosses, edge: id === 'upper' ? upperEdge : lowerEdge, side: id === 'upper' ? '+y' : '-y', fillet: sized(p.fillet) });
    const round = (id: string, name: string, place: typeof big, radius: number, end: Direction) =>
      cut.roundedEnd({ id, name, axis: 'x', centre: [line, place], radius: sized(radius), end });
    const flute = (id: string, name: string, tool: '-x' | '+x', entry: typeof outer, to: typeof outer) =>
      cut.slot({ id, name, tool, entry, floor: to, middle: line, walls: fluteWalls, ends: fluteEnds });
    const outerUp = { up: '+x', right: '+z', zero: [line.id, big.id, outer.id] } as const;
    const plate = { kind: 'fixture', between: [inner.id, outer.id] } as const;
    const innerSetUp: SetUp = { id: 'C', machine: 'mill', holding: 'plate with a pin through each bore, turned over, clamped', grip: plate, up: '-x', right: '+z', zero: [line.id, big.id, inner.id] };

    const [turntable, vice] = both ? (['D', 'E'] as const) : (['C', 'D'] as const);

    return {
      name: 'connecting-rod',
      title: 'Connecting rod',
      engine: 'Tormentil, 5 inch gauge',
      units: 'in',
      quantity: 1,
      material: { name: 'bright mild steel', trade: 'bright mild steel' },
      stock,
      stations: at.all(),
      setUps: [
        { id: 'A', machine: 'mill', holding: 'clamps on parallels, outer face up, true along the bar', grip: { kind: 'clamps', between: [inner.id, outer.id] }, ...outerUp },
        { id: 'B', machine: 'mill', holding: 'plate with a pin through each bore, outer face up, clamped', grip: plate, ...outerUp },
        ...(both ? [innerSetUp] : []),
        { id: turntable, machine: 'mill', holding: 'turntable, on a pin through the bore at that end, clamped', grip: plate, ...outerUp },
        { id: vice, machine: 'mill', holding: 'vice, gripped by the faces, upper edge level', grip: { kind: 'vice', between: [inner.id, outer.id] }, up: '+y', right: '+z', zero: [middle.id, big.id, line.id] },
      ],
      operations: [
        {
          number: 10,
          title: 'Bore the big end',
          setUp: 'A',
          cutter: { name: 'drills, then boring head', diameter: p.bigBore },
          cuts: [cut.hole(bigBore)],
          check: ['plug gauge; the bush is a press fit'],
          caution: ['clamping'],
        },
        {
          number: 20,
          title: 'Drill and ream the little end',
          setUp: 'A',
          cutter: { name: 'drill under size, then reamer', diameter: p.smallBore },
          cuts: [cut.hole(smallBore)],
          check: ['over plugs in both bores by caliper: less half of each plug this is the distance of the centres'],
        },
        {
          number: 30,
          title: 'Mill the edges of the shank',
          setUp: 'B',
          cutter: { name: 'end mill, its radius the fillet', diameter: 2 * p.fillet },
          cuts: [shank('upper'), shank('lower')],
          leave: [{ length: 5 * thou }, ' for the last pass'],
          check: ['height of the shank by micrometer; both edges alike from plugs in the bores'],
        },
        {
          number: 40,
          title: both ? 'Mill the outer flute' : 'Mill the flute',
          setUp: 'B',
          cutter: { name: 'slot drill', diameter: p.fluteWidth },
          cuts: [flute('flute', both ? 'outer flute' : 'flute', '-x', outer, floor)],
          leave: [{ length: 2 * thou }, ' on the floor for one last pass from end to end'],
          check: ['mark this face OUTER; depth by depth gauge, flanges alike by caliper'],
          caution: ['dimension-check'],
        },
        ...(innerFloor === undefined
          ? []
          : [
              {
                number: 50,
                title: 'Mill the inner flute',
                setUp: 'C',
                cutter: { name: 'slot drill', diameter: p.fluteWidth },
                cuts: [flute('inner-flute', 'inner flute', '+x', inner, innerFloor)],
                leave: [{ length: 2 * thou }, ' on the floor for one last pass from end to end'],
                check: ['web by micrometer with ball anvils, or over two balls'],
              },
            ]),
        {
          number: 60,
          title: 'Round the ends',
          setUp: turntable,
          cutter: { name: 'end mill' },
          cuts: [round('big-end', 'big end', big, p.bigRadius, '-z'), round('small-end', 'little end', small, p.smallRadius, '+z')],
          check: ['wall about the bore alike all round; the round runs into the fillets'],
        },
        {
          number: 70,
          title: 'Drill the oil holes',
          setUp: vice,
          cutter: { name: `centre drill, then drill ${p.oilHole.name}`, diameter: p.oilHole.diameter },
          cuts: [cut.hole(bigOil), cut.hole(smallOil)],
          check: ['now the hand is made: outer face, and this edge up; then a wire passes into the bore'],
          caution: ['small-drill'],
        },
        {
          number: 80,
          title: 'Countersink the oil cups',
          setUp: vice,
          cutter: { name: '90° countersink' },
          cuts: [cup(bigOil), cup(smallOil)],
          check: ['both alike by eye'],
        },
      ],
      notes: [['Drill both rods together, or to the axle and crosshead as made: centres as they are count more than the figure.'], ['Press the bushes in and ream them last; carry the oil holes through them.']],
      cautions: ['sharp-edges', 'eyes'],
      attitude: { kind: 'milled', front: '+x', up: '+y' },
      handAxis: 'x',
      hand: 'right',
      texture: 3.2,
    };
  },
});
