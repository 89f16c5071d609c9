import type { Operation, Part, SetUp } from '../part/part.js';
import type { Material } from '../trade/material.js';
import type { Machine } from '../trade/shop/shop.js';
import { spindleSpeed } from '../trade/shop/spindle-speed.js';
import { turnsPerMinute } from '../trade/cutting.js';
import { drills, nearestDrill, type Drill, type DrillSeries } from '../trade/drills.js';
import { chooseEndMill, roomForMill, type EndMill } from './end-mill.js';
import { feedWords } from './feeds.js';
import { figure } from './figures.js';
import type { MachineFrame } from './machine-frame.js';
import { materialOf } from './material.js';
import { shopMachine, type Listener } from './shop-machine.js';
import { workOf, type Work, type WorkKind } from './work.js';

/** How one cutter of an operation runs. */
export interface CutterPlan {
  readonly kind: WorkKind;
  /** What to put in the machine, as printed. */
  readonly name: string;
  /** Of the cutter, or of the work on a lathe, mm: what the speed is worked out from. */
  readonly diameter?: number;
  /** Turns a minute that the machine has; absent where it is turned by hand, or the material or machine is not known. */
  readonly speed?: number;
  /** Where there is no speed: why. */
  readonly still?: string;
  readonly feed: string;
  /** What to mind about the speed. */
  readonly remark?: string;
  readonly endMill?: EndMill;
}

/** The cut of the speed tables to which a kind of work belongs; none for what is turned by hand. */
const inTables: Readonly<Record<WorkKind, string | undefined>> = {
  facing: 'turning',
  turning: 'turning',
  chamfering: 'forming',
  boring: 'boring',
  parting: 'parting',
  drilling: 'drilling',
  centring: 'drilling',
  reaming: 'reaming',
  countersinking: 'countersinking',
  counterboring: 'counterboring',
  milling: 'milling',
  tapping: undefined,
  threading: undefined,
  // Against a shoulder the lathe is turned by hand.
  'screw-cutting': undefined,
  sawing: 'milling',
};

/** The speeds and feeds of an operation, a cutter each. */
export function cutterPlans(part: Part, setUp: SetUp, operation: Operation, frame: MachineFrame, listener: Listener): readonly CutterPlan[] {
  const { shop, unit } = listener;
  const machine = shopMachine(shop, setUp.machine);
  const material = materialOf(part.material);
  const works = workOf(part, setUp, operation);
  return works.map((work): CutterPlan => {
    const endMill = work.kind === 'milling' ? chooseEndMill(shop, unit, roomForMill(part, frame, operation), operation.cutter.diameter) : undefined;
    const ahead = work.kind === 'drilling' && works.some(({ kind }) => kind === 'reaming');
    const under = ahead && work.diameter !== undefined ? drillUnder(work.diameter, listener) : undefined;
    const diameter = endMill?.cutter.diameter ?? under?.diameter ?? work.diameter;
    const name = nameOf(operation, works, work, { endMill, under: under?.name, unit });
    const running = speedOf(work.kind, diameter, material, machine, listener, endMill?.cutter.material ?? 'hss');
    return {
      kind: work.kind,
      name,
      ...(diameter === undefined ? {} : { diameter }),
      ...running,
      feed: diameter === undefined ? '' : feedWords({ kind: work.kind, diameter, unit, speed: running.speed, teeth: endMill?.cutter.teeth ?? 1, machine }),
      ...(endMill === undefined ? {} : { endMill }),
    };
  });
}

/** What a reamer is left to take off the diameter, mm: common practice, a hundredth of an inch up to half an inch. */
const forReamer = 0.25;

/** The drill before a reamer: of the shop, or of the tables in the series of the print's unit; undefined where none is so small. */
function drillUnder(diameter: number, { shop, unit }: Listener): Drill | undefined {
  const series: readonly DrillSeries[] = unit === 'in' ? ['number', 'letter', 'fraction'] : ['metric'];
  const [least, most] = [diameter / 2, diameter - forReamer / 2];
  const fitting = (list: readonly Drill[]): readonly Drill[] => list.filter((drill) => drill.diameter > least && drill.diameter <= most);
  const own = fitting(shop.drills ?? drills.filter((drill) => series.includes(drill.series)));
  const from = own.length > 0 ? own : fitting(drills);
  return from.length === 0 ? undefined : nearestDrill(diameter - forReamer, { from });
}

/** Millings and drillings that are named by more than the operation's own words. */
function nameOf(
  operation: Operation,
  works: readonly Work[],
  work: Work,
  chosen: { readonly endMill: EndMill | undefined; readonly under: string | undefined; readonly unit: 'in' | 'mm' },
): string {
  const own = operation.cutter.name;
  if (chosen.endMill !== undefined) return `${works.length === 1 ? own : 'end mill'} \u2300${figure(chosen.endMill.cutter.diameter, chosen.unit)}`;
  if (works.length === 1) return own;
  const size = work.diameter === undefined ? '' : ` \u2300${figure(work.diameter, chosen.unit)}`;
  switch (work.kind) {
    case 'drilling':
      return `drill ${chosen.under ?? work.tool ?? size.trim()}`;
    case 'reaming':
      return `reamer${size}`;
    case 'tapping':
      return `tap ${work.tool ?? ''}`;
    case 'threading':
      return `die ${work.tool ?? ''}`;
    case 'centring':
      return work.tool ?? 'centre drill';
    case 'boring':
      return 'boring tool';
    case 'countersinking':
      return 'countersink';
    case 'counterboring':
      return `counterbore${size}`;
    case 'facing':
    case 'turning':
    case 'chamfering':
    case 'parting':
    case 'milling':
    case 'sawing':
    case 'screw-cutting':
      return own;
  }
}

function speedOf(
  kind: WorkKind,
  diameter: number | undefined,
  material: Material | undefined,
  machine: Machine | undefined,
  { shop }: Listener,
  tool: 'hss' | 'carbide',
): Pick<CutterPlan, 'speed' | 'still' | 'remark'> {
  const operation = inTables[kind];
  if (operation === undefined) return { still: 'by hand' };
  if (material === undefined) return { still: 'material not in the tables' };
  if (machine === undefined) return { still: 'no such machine in the shop' };
  if (diameter === undefined) return {};
  const { snapped, range, tooFast, tooLarge } = spindleSpeed({ ...shop, machines: [machine] }, { material, diameter, tool, operation, machine: machine.name });
  const least = turnsPerMinute(range[0], diameter);
  const fastest = 'from' in machine.speeds ? machine.speeds.to : Math.max(...machine.speeds);
  const remark = tooLarge
    ? 'the work does not swing in this lathe'
    : tooFast
      ? 'the slowest: light cuts, oil'
      : snapped < least && snapped >= fastest - 1e-9
        ? 'the fastest: feed lightly'
        : undefined;
  return { speed: snapped, ...(remark === undefined ? {} : { remark }) };
}
