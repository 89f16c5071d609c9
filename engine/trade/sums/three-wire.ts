import { UserError } from '../../units/user-error.js';
import { findThread } from '../threads.js';
import { cosine, sine, tangent } from './geometry-of-degrees.js';
import { figures, say, type Sum } from './sum.js';

export const threeWire: Sum = {
  name: 'three-wire',
  summary: 'the measure over three wires laid in a thread, or the effective diameter from a measure',
  example: { thread: '1/4-20', wire: '0.032in' },
  source: 'M = E - P / (2 tan(a/2)) + W (1 + 1 / sin(a/2)), handbook formula, helix angle neglected; best wire P / (2 cos(a/2))',
  arguments: [
    { name: 'thread', kind: 'thread', about: 'the thread', required: true },
    { name: 'wire', kind: 'length', about: 'diameter of the wires; the best wire if not given' },
    { name: 'measured', kind: 'length', about: 'a measure over the wires, from which the effective diameter is wanted' },
  ],
  compute(values, context) {
    const thread = findThread(values.text('thread'));
    const half = thread.formAngle / 2;
    const best = thread.pitch / (2 * cosine(half));
    const wire = values.numberOr('wire', best);
    const triangle = thread.pitch / (2 * tangent(half));
    const grow = 1 + 1 / sine(half);
    const over = thread.pitchDiameter - triangle + wire * grow;
    // From the sharp root of the vee: where the wire touches, and where the flank ends at the crest.
    const touch = (wire / 2 / tangent(half)) * cosine(half);
    const crest = (thread.major - (thread.pitchDiameter - triangle)) / 2;
    if (over <= thread.major) throw new UserError(`wire ${say(wire, context)} is too thin for ${thread.designation}: it lies below the crests; the best wire is ${say(best, context)}.`);
    if (touch > crest) throw new UserError(`wire ${say(wire, context)} is too thick for ${thread.designation}: it rests on the crests; the best wire is ${say(best, context)}.`);
    const effective = values.has('measured') ? values.number('measured') + triangle - wire * grow : undefined;
    if (effective !== undefined && (effective <= thread.minorExternal || effective >= thread.major)) {
      throw new UserError(`a measure of ${say(values.number('measured'), context)} is not one of ${thread.designation} over wires of ${say(wire, context)}: about ${say(over, context)} is expected.`);
    }
    return {
      result: {
        overWires: over,
        wire,
        bestWire: best,
        pitchDiameter: thread.pitchDiameter,
        ...(effective === undefined ? {} : { measuredPitchDiameter: effective, error: effective - thread.pitchDiameter }),
      },
      steps: [
        `${thread.designation}: E ${say(thread.pitchDiameter, context)}, P ${say(thread.pitch, context)}, ${thread.formAngle} degrees`,
        `M = E - ${figures(triangle / thread.pitch, 6)} P + ${figures(grow, 6)} W = ${say(thread.pitchDiameter, context)} - ${say(triangle, context)} + ${say(wire * grow, context)} = ${say(over, context)}`,
        `best wire P / (2 cos ${half}) = ${say(best, context)}`,
        ...(effective === undefined ? [] : [`measured ${say(values.number('measured'), context)}: effective diameter ${say(effective, context)}`]),
      ],
    };
  },
};
