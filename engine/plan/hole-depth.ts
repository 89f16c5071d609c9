import type { HoleSize } from '../part/cut.js';
import type { Operation, Part } from '../part/part.js';
import { coordinate, figure } from './figures.js';
import { diameterThere, type AtHoles } from './hole-places.js';
import { toMachine, type MachineFrame } from './machine-frame.js';
import type { Reader } from './setting.js';

/** Length of the point of a drill, mm. */
const pointOf = ({ diameter, pointAngle }: HoleSize): number => (pointAngle >= 180 ? 0 : diameter.value / 2 / Math.tan((pointAngle * Math.PI) / 360));

/** Travel of a slide in words: ".1648", or ".1648 (2 t + 9.3 d)". */
function travel(mm: number, frame: MachineFrame, reader: Reader): string {
  const dial = frame.setUp.machine === 'lathe' ? undefined : reader.dial('z', mm);
  return `${figure(mm, reader.unit)}${dial === undefined ? '' : ` (${dial})`}`;
}

/** How deep to go, from where the cutter touches. */
export function depthWords(part: Part, frame: MachineFrame, operation: Operation, size: AtHoles, reader: Reader): string {
  const lathe = frame.setUp.machine === 'lathe';
  const height = toMachine(frame, size.points[0]!)[2];
  const face = frame.known.z && !lathe ? `the face (Z ${coordinate(height, reader.unit)})` : 'the face';
  // "In" would read as inches.
  const go = (words: string): string => (lathe ? `then go ${words} deeper` : `then down ${words}`);
  switch (size.kind) {
    case 'hole': {
      const point = pointOf(size);
      if (size.depth !== undefined) {
        const depth = size.depth.value;
        const by = travel(depth + point, frame, reader);
        if (point === 0) return `Depth: touch ${face}, ${go(by)}.`;
        return `Depth: touch the tip on ${face}, ${go(by)}: ${figure(depth, reader.unit)} of full diameter, and the point.`;
      }
      if (size.into !== undefined) return `Depth: from ${face} until it breaks into the ${size.into.replace(/^the /, '')}; go gently there.`;
      return `Depth: right through${point === 0 ? '' : `; the tip ${figure(point, reader.unit)} and a little more past the far side`}.${lathe ? '' : ' Leave room under the work.'}`;
    }
    case 'tapping':
      return size.depth === undefined ? 'Tap right through.' : `Full thread ${figure(size.depth.value, reader.unit)} deep: ${turnsOf(size.depth.value / size.thread.pitch)} turns after the lead of the tap is in.`;
    case 'counterbore':
      return `Depth: touch ${face}, ${go(travel(size.depth.value, frame, reader))}.`;
    case 'countersink': {
      const hole = diameterThere(part, operation, size);
      const deep = (diameter: number): number => (size.diameter.value - diameter) / 2 / Math.tan((size.angle * Math.PI) / 360);
      const mouth = `until the mouth is \u2300${figure(size.diameter.value, reader.unit)}`;
      if (hole === undefined || hole >= size.diameter.value) return `Depth: ${mouth}.`;
      return `Depth: touch the edge of the hole, ${go(travel(deep(hole), frame, reader))}, ${mouth}.`;
    }
  }
}

/** Turns of a tap, to a half. */
const turnsOf = (turns: number): string => String(Math.ceil(turns * 2 - 1e-6) / 2);
