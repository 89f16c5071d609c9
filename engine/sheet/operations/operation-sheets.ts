import type { Orientation, Paper } from '../../../templates/paper.js';
import type { Operation, Part, SetUp } from '../../part/part.js';
import type { Vector2 } from '../../geometry/vector.js';
import { cutSolid } from '../../solid/combine.js';
import type { Kernel } from '../../solid/kernel.js';
import { formsToSolid, stockForms } from '../../solid/build.js';
import type { Solid } from '../../solid/model.js';
import { cautionText } from '../compose/notes-of.js';
import { pictureItems } from '../compose/picture-block.js';
import type { PaperBox } from '../frame-box.js';
import { movedItems } from '../place/pieces.js';
import { stationName } from '../../part/author/phrases.js';
import type { Speech } from '../say/texts.js';
import { axesSign } from './axes-sign.js';
import { operationPoint, placeBalloons } from './balloons.js';
import { columnsOn } from './columns.js';
import { flow, type FlowedSheet } from './flow.js';
import { machineCamera, pictureOf } from './picture.js';
import { cautionStrip, headingStrip, operationStrip, setUpStrip, type Strip } from './strips.js';

const pictureWidth = 64;
const pictureHeight = 52;

/** The operation table, set-up by set-up, each with a picture of the work as it sits on the machine when the set-up is done. */
export function operationSheets(
  kernel: Kernel,
  part: Part,
  finished: Solid,
  speech: Speech,
  paper: Paper,
  orientation: Orientation,
  taken: readonly PaperBox[],
): readonly FlowedSheet[] {
  const columns = columnsOn(paper, orientation, taken);
  const width = columns[0]!.right - columns[0]!.left;
  let state = formsToSolid(kernel, stockForms(part), []);
  const groups = runsOf(part).map(({ setUp, operations }, i, all) => {
    const forms = operations.flatMap((operation) => operation.cuts.flatMap((cut) => cut.forms.map((form) => ({ cut: cut.id, form }))));
    if (forms.length > 0) state = i === all.length - 1 ? finished : cutSolid(kernel, state, forms);
    const head = setUpStrip(setUp, describe(setUp), pictureWithBalloons(part, setUp, operations, state), width);
    const heading = headingStrip(width);
    const warned = [...new Set(operations.flatMap((operation) => operation.caution ?? []))].map(cautionText);
    // Cautions never stand on a sheet without an operation of their set-up.
    const rows = operations.map((operation, row) => ({ ...operationStrip(operation, speech, width), withNext: warned.length > 0 && row === operations.length - 1 }));
    const strips: Strip[] = [head, heading, ...rows];
    if (warned.length > 0) strips.push(cautionStrip(warned, width));
    return { strips, continued: [heading] };
  });
  return flow(groups, columns);
}

/** Operations in their order, those in a row that share a set-up together. */
export function runsOf(part: Part): readonly { readonly setUp: SetUp; readonly operations: readonly Operation[] }[] {
  const runs: { setUp: SetUp; operations: Operation[] }[] = [];
  for (const operation of part.operations) {
    const last = runs[runs.length - 1];
    if (last !== undefined && last.setUp.id === operation.setUp) last.operations.push(operation);
    else runs.push({ setUp: part.setUps.find(({ id }) => id === operation.setUp)!, operations: [operation] });
  }
  return runs;
}

const machines: Readonly<Record<SetUp['machine'], string>> = { lathe: 'Lathe', mill: 'Mill', drill: 'Drilling machine', bench: 'Bench' };

/** How the work is held and where zero is, in sentences. */
function describe(setUp: SetUp): readonly string[] {
  const zero = setUp.zero.map((id) => `${id[0]!.toUpperCase()} ${stationName(id)}`);
  return [
    `${machines[setUp.machine]}. Hold: ${setUp.holding}.`,
    ...(zero.length === 0 ? [] : [`Zero: ${zero.join(', ')}.`]),
    `Picture: ${setUp.machine === 'lathe' ? 'chuck at left, tailstock at right' : 'as it sits, up is up'}, when this set-up is done.`,
  ];
}

function pictureWithBalloons(
  part: Part,
  setUp: SetUp,
  operations: readonly Operation[],
  state: Solid,
): { readonly items: ReturnType<typeof movedItems>; readonly width: number; readonly height: number } {
  const camera = machineCamera(setUp);
  const view = pictureOf(state, camera);
  const [w, h] = [view.box.high[0] - view.box.low[0], view.box.high[1] - view.box.low[1]];
  const factor = Math.min(pictureWidth / w, pictureHeight / h, 5);
  const group = `set-up ${setUp.id}`;
  const used: Vector2[] = [];
  const sites = operations.flatMap((operation) => {
    const at = operationPoint(part, operation, state, view, used);
    if (at === undefined) return [];
    used.push(at);
    return [{ number: operation.number, at: [at[0] * factor, at[1] * factor] as Vector2 }];
  });
  const box = {
    left: view.box.low[0] * factor,
    right: view.box.high[0] * factor,
    bottom: view.box.low[1] * factor,
    top: view.box.high[1] * factor,
  };
  const balloons = placeBalloons(group, sites, box);
  const sign = axesSign(group, camera, [0, 0]);
  const axes = axesSign(group, camera, [balloons.box.left - sign.box.right - 2, Math.max(balloons.box.bottom, balloons.box.top - sign.box.top)]);
  const left = Math.min(balloons.box.left, axes.box.left);
  const items = movedItems([...pictureItems(group, view, factor), ...balloons.items, ...axes.items], [-left, -balloons.box.top - 2]);
  return { items, width: balloons.box.right - left, height: balloons.box.top - Math.min(balloons.box.bottom, axes.box.bottom) + 2 };
}
