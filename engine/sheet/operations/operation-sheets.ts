import type { Orientation, Paper } from '../../../templates/paper.js';
import type { Vector2 } from '../../geometry/vector.js';
import type { Operation, Part, SetUp } from '../../part/part.js';
import type { RunPlan, ShopPlan } from '../../plan/plan.js';
import { runsOf } from '../../plan/runs.js';
import { countingSentences } from '../../plan/set-up-plan.js';
import type { SettingBlock } from '../../plan/setting.js';
import type { Solid } from '../../solid/model.js';
import { projectPoint } from '../../view/camera.js';
import { cautionText } from '../compose/notes-of.js';
import { pictureItems } from '../compose/picture-block.js';
import type { PaperBox } from '../frame-box.js';
import { movedItems } from '../place/pieces.js';
import type { Speech } from '../say/texts.js';
import { axesSign, type NamedAxes } from './axes-sign.js';
import { mouthPoint, operationPoint, placeBalloons, type Site } from './balloons.js';
import { columnsOn } from './columns.js';
import { flow, type FlowedSheet } from './flow.js';
import { operationStrips } from './operation-strips.js';
import { machineCamera, pictureOf } from './picture.js';
import { prepareOperations, type PreparedOperations } from './prepare-operations.js';
import { cautionStrip, headingStrip, noteStrips, setUpStrip, type Strip } from './strips.js';

export { prepareOperations, runsOf };

const pictureWidth = 64;
const pictureHeight = 52;

/**
 * The operation table, set-up by set-up, each with a picture of the work as it sits on the machine when the set-up is done.
 * @param counted false where other sheets that go with them say how the settings are counted.
 */
export function operationSheets(
  part: Part,
  { plan, states }: PreparedOperations,
  speech: Speech,
  paper: Paper,
  orientation: Orientation,
  taken: readonly PaperBox[],
  counted = true,
): readonly FlowedSheet[] {
  const columns = columnsOn(paper, orientation, taken);
  const width = columns[0]!.right - columns[0]!.left;
  const groups = plan.runs.map((run, i) => {
    const operations = run.operations.flatMap(({ number }) => part.operations.find((operation) => operation.number === number) ?? []);
    const head = setUpStrip(run.setUp, describe(run), run.pickUp, pictureWithBalloons(part, run, operations, states[i]!), width);
    const heading = headingStrip(width);
    const warned = [...new Set(operations.flatMap((operation) => operation.caution ?? []))].map(cautionText);
    const rows = operations.flatMap((operation, row) => operationStrips(operation, run.operations[row]!, speech, width));
    // Cautions never stand on a sheet without an operation of their set-up.
    const strips: Strip[] = [head, heading, ...rows.map((row, k) => ({ ...row, withNext: warned.length > 0 && k === rows.length - 1 }))];
    if (warned.length > 0) strips.push(cautionStrip(warned, width));
    return { strips, continued: [heading] };
  });
  const first = !counted ? [] : [{ strips: noteStrips('How the settings are counted', [{ kind: 'lines', lines: countingLines(plan) }], width, true), continued: [] }];
  const toGet = toGetBlock(plan);
  const last = toGet === undefined ? [] : [{ strips: noteStrips('To get, or to do without', [toGet], width, false), continued: [] }];
  return flow([...first, ...groups, ...last], columns);
}

/** What is said once, at the head of the first sheet. */
const countingLines = (plan: ShopPlan): readonly string[] => [`Machines: ${plan.machines}.`, ...countingSentences(plan.runs.flatMap(({ counting }) => counting ?? []))];

function toGetBlock({ toGet, compared }: ShopPlan): SettingBlock | undefined {
  if (!compared) return undefined;
  if (toGet.length === 0) return { kind: 'lines', lines: ['Nothing: all that the shop file lists is enough for this part.'] };
  return { kind: 'lines', lines: toGet.map((lack) => `${lack.toGet}: ${lack.instead}.`) };
}

const machineNames: Readonly<Record<SetUp['machine'], string>> = { lathe: 'Lathe', mill: 'Mill', drill: 'Drilling machine', bench: 'Bench' };

/** How the work is held, where zero is and how is counted, in sentences. */
function describe({ setUp, zero, counting }: RunPlan): readonly string[] {
  return [
    `${machineNames[setUp.machine]}. Hold: ${setUp.holding}.`,
    ...zero,
    ...(counting === undefined ? [] : [counting.short]),
  ];
}

function pictureWithBalloons(
  part: Part,
  { setUp, frame, zero }: RunPlan,
  operations: readonly Operation[],
  state: Solid,
): { readonly items: ReturnType<typeof movedItems>; readonly width: number; readonly height: number } {
  const camera = machineCamera(setUp);
  const view = pictureOf(state, camera);
  const [w, h] = [view.box.high[0] - view.box.low[0], view.box.high[1] - view.box.low[1]];
  const factor = Math.min(pictureWidth / w, pictureHeight / h, 5);
  const group = `set-up ${setUp.id}`;
  const used: Vector2[] = [];
  const sites = operations.flatMap((operation): readonly Site[] => {
    const at = operationPoint(part, operation, state, view, used) ?? mouthPoint(operation, camera);
    if (at === undefined) return [];
    used.push(at);
    return [{ number: operation.number, at: [at[0] * factor, at[1] * factor] }];
  });
  const box = {
    left: view.box.low[0] * factor,
    right: view.box.high[0] * factor,
    bottom: view.box.low[1] * factor,
    top: view.box.high[1] * factor,
  };
  const [zeroX, zeroY] = projectPoint(camera, frame.origin);
  const marked: readonly Site[] = zero.length === 0 ? sites : [...sites, { number: 'zero', at: [zeroX * factor, zeroY * factor] }];
  const balloons = placeBalloons(group, marked, box);
  const axes: NamedAxes = setUp.machine === 'lathe' ? [['X', frame.x], ['Z', frame.z]] : [['X', frame.x], ['Y', frame.y], ['Z', frame.z]];
  const sign = axesSign(group, camera, [0, 0], axes);
  const placed = axesSign(group, camera, [balloons.box.left - sign.box.right - 2, Math.max(balloons.box.bottom, balloons.box.top - sign.box.top)], axes);
  const left = Math.min(balloons.box.left, placed.box.left);
  const items = movedItems([...pictureItems(group, view, factor), ...balloons.items, ...placed.items], [-left, -balloons.box.top - 2]);
  return { items, width: balloons.box.right - left, height: balloons.box.top - Math.min(balloons.box.bottom, placed.box.bottom) + 2 };
}
