import { add2 } from '../geometry/vector.js';
import { anchorShare, fontSize, layoutText, moveCurve, turn2, turnCurve } from '../lettering/index.js';
import type { TextItem } from '../sheet/drawing.js';
import type { InkLetters, InkStroke, InkText } from './ink.js';

/** A line of text as ink: letters along its base line, signs as strokes on the paper. Throws as layoutText does. */
export function inkText(item: TextItem): InkText {
  const { runs, width } = layoutText(item.text, item.height, item.style);
  const origin = add2(item.at, turn2([-anchorShare[item.anchor] * width, 0], item.angle));
  const strokes: InkStroke[] = [];
  const [letters, signs]: [InkLetters[], InkLetters[]] = [[], []];
  for (const run of runs) {
    const { text, x } = run;
    if (run.kind === 'letters') {
      letters.push({ text, x, width: run.width });
    } else {
      signs.push({ text, x, width: run.width });
      const curves = run.strokes.map((stroke) => moveCurve(turnCurve(stroke, item.angle), origin));
      strokes.push({ kind: 'stroke', width: run.thickness, ends: 'round', curves });
    }
  }
  return {
    kind: 'text',
    ...(item.about === undefined ? {} : { about: item.about }),
    text: item.text,
    use: item.use,
    origin,
    angle: item.angle,
    size: fontSize(item.height, item.style),
    style: item.style,
    letters,
    signs,
    strokes,
  };
}
