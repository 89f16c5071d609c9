import { length, subtract } from '../../geometry/vector.js';
import { parseLength } from '../../units/length.js';
import { endMills } from '../data/end-mills.js';
import { roomForMill } from '../end-mill.js';
import type { Finding } from '../finding.js';
import { turnedSteps } from '../turned-steps.js';
import { acrossRound, commonPractice, figureOf, frameOf, mm, type Check } from './context.js';
import { endMillOf } from './cutters.js';

/** A cutter may be so much larger than its place on paper, mm: rounding of sizes between the systems. */
const slack = 0.005;

/** Whether the cutter is no wider than the narrowest place that it must enter. */
export const cutterRoom: Check = (context, state) => {
  const { operation } = state;
  const finding = (gravity: Finding['gravity'], figures: Finding['figures'], ...sentence: Finding['sentence']): Finding => ({ check: 'cutter reach', operation: operation.number, gravity, figures, sentence, source: commonPractice });
  if (state.setUp.machine === 'lathe') {
    const width = operation.cutter.diameter;
    if (width === undefined || !/part|groov/i.test(operation.cutter.name)) return [];
    const grooves = operation.cuts.flatMap(turnedSteps).filter(({ internal }) => !internal).map(({ from, to }) => length(subtract(to.point, from.point)));
    const narrow = Math.min(Infinity, ...grooves);
    return width > narrow + slack ? [finding('fatal', { width: figureOf(width), room: figureOf(narrow) }, 'The tool does not enter: it is ', mm(width), ' wide, and the groove ', mm(narrow))] : [];
  }
  const diameter = endMillOf(context, state);
  if (diameter === undefined) return [];
  const frame = frameOf(context, state);
  const { number, title, setUp, cutter, cuts } = operation;
  const room = roomForMill(context.part, frame, { number, title, setUp, cutter, cuts });
  const rough = roomForMill(context.part, frame, operation);
  const figures = { diameter: figureOf(diameter), room: figureOf(room) };
  if (diameter > room + slack) return [finding('fatal', figures, 'The cutter does not enter: it is ', acrossRound(diameter), ', and the narrowest place (the width, or a corner’s radius twice) has ', mm(room))];
  const least = parseLength(endMills[context.unit][0], { unit: context.unit });
  if (room < least - slack) return [finding('fatal', { ...figures, least: figureOf(least) }, 'No usual cutter enters: the narrowest place has ', mm(room), ', and the smallest end mill that small shops have is ', acrossRound(least))];
  if (diameter > rough + slack && rough > 0 && diameter < room - slack) return [finding('warning', { ...figures, left: figureOf(room - rough) }, 'With what is to be left on the walls the first cut has ', mm(rough), ' of room only, and the cutter is ', acrossRound(diameter), ': rough with a smaller one')];
  return [];
};
