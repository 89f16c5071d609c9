import type { Finding } from '../finding.js';
import { deepestBoring, deepestMilling, jobberDrills, lengthIn, longEndMills, shortEndMills } from '../data/cutter-lengths.js';
import { acrossRound, commonPractice, figureOf, frameOf, mm, plain, type Check } from './context.js';
import { cuttersOf, endMillOf } from './cutters.js';
import { drillings } from './drillings.js';
import { ownWallHeight } from './own-walls.js';
import { place } from './placed.js';

const long = /long/i;

/** Whether flutes are as long as what they cut is deep. */
export const cutterLength: Check = (context, state) => {
  const { operation, setUp, after } = state;
  const source = 'end mills DIN 844, drills DIN 338 (from memory)';
  const finding = (gravity: Finding['gravity'], figures: Finding['figures'], ...sentence: Finding['sentence']): Finding => ({ check: 'cutter reach', operation: operation.number, gravity, figures, sentence, source });
  const found: Finding[] = [];
  const diameter = endMillOf(context, state);
  if (diameter !== undefined) {
    const placed = place(after, frameOf(context, state));
    const milled = operation.cuts.filter(({ sizes }) => sizes.every((size) => size.kind !== 'hole' || size.finish === 'milled'));
    const depth = Math.max(0, ...milled.map((cut) => ownWallHeight(placed, cut)));
    const [usual, longer] = [lengthIn(shortEndMills, diameter), lengthIn(longEndMills, diameter)];
    const figures = { depth: figureOf(depth), diameter: figureOf(diameter), flute: figureOf(long.test(operation.cutter.name) ? longer : usual), longFlute: figureOf(longer) };
    const deep = ['The wall is ', mm(depth), ' high, ', `${plain(depth / diameter)} diameters of the cutter (`, acrossRound(diameter), '); '] as const;
    if (depth > deepestMilling * diameter) found.push({ ...finding('fatal', figures, ...deep, `no usual cutter reaches so deep: ${deepestMilling} diameters is the most`), source: commonPractice });
    else if (depth > longer + 0.01) found.push(finding('warning', figures, ...deep, 'flutes of the long series are ', mm(longer), ': an extra-long cutter or a relieved shank is wanted, and light cuts'));
    else if (depth > usual + 0.01 && !long.test(operation.cutter.name)) found.push(finding('remark', figures, ...deep, 'usual flutes are ', mm(usual), ': take one of the long series, ', mm(longer)));
  }
  for (const { size, metal } of drillings(context, state)) {
    const drill = size.diameter.value;
    const flute = lengthIn(jobberDrills, drill);
    const deep = Math.max(size.depth?.value ?? 0, ...metal.map(({ depth }) => depth));
    if (deep > flute) found.push(finding('warning', { depth: figureOf(deep), diameter: figureOf(drill), flute: figureOf(flute) }, 'The hole goes ', mm(deep), ' deep, ', `${plain(deep / drill)} diameters; the flutes of a jobber drill `, acrossRound(drill), ' are ', mm(flute), ': a long drill is wanted, or drilling from both ends'));
  }
  if (setUp.machine === 'lathe' || setUp.machine === 'mill')
    for (const cutter of cuttersOf(context, state).filter(({ kind }) => kind === 'boring')) {
      const bored = operation.cuts.flatMap(({ sizes }) => sizes).flatMap((size) => ((size.kind === 'hole' && size.finish === 'bored') || size.kind === 'counterbore' ? [{ across: size.diameter.value, deep: size.depth?.value ?? 0 }] : []));
      const worst = bored.sort((a, b) => b.deep / b.across - a.deep / a.across)[0];
      if (worst !== undefined && worst.deep > deepestBoring * worst.across) found.push({ ...finding('warning', { depth: figureOf(worst.deep), diameter: figureOf(worst.across), kind: cutter.kind }, 'A boring tool goes ', mm(worst.deep), ' deep into ', acrossRound(worst.across), `, ${plain(worst.deep / worst.across)} diameters: more than ${deepestBoring} chatters`), source: commonPractice });
    }
  return found;
};
