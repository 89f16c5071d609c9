import { add, scale } from '../geometry/vector.js';
import type { Cut, Size } from '../part/cut.js';
import type { Operation, Part, SetUp } from '../part/part.js';
import { vectorOf } from '../part/author/directions.js';
import { diameterBefore, turnedSteps } from './turned-steps.js';

/** What a cutter does to the work. */
export type WorkKind =
  | 'facing'
  | 'turning'
  | 'chamfering'
  | 'boring'
  | 'parting'
  | 'drilling'
  | 'centring'
  | 'reaming'
  | 'tapping'
  | 'threading'
  | 'screw-cutting'
  | 'sawing'
  | 'countersinking'
  | 'counterboring'
  | 'milling';

/** One use of a cutter in an operation. */
export interface Work {
  readonly kind: WorkKind;
  /** Of the work where it turns, of the cutter elsewhere, mm; absent for an end mill, which is chosen. */
  readonly diameter?: number;
  /** The drill, tap or die by its name in the tables. */
  readonly tool?: string;
}

/** What a turning tool does by the way. */
const turnedToo: readonly WorkKind[] = ['facing', 'chamfering'];

/** What an operation does, each kind once with the greatest diameter that it meets, in the order of the cuts. */
export function workOf(part: Part, setUp: SetUp, operation: Operation): readonly Work[] {
  if (setUp.machine === 'bench') return [];
  const found = operation.cuts.flatMap((cut) => [...ofSizes(setUp, cut), ...(setUp.machine === 'lathe' ? turned(part, setUp, operation, cut) : milled(operation, cut))]);
  const kinds = [...new Set(found.map(({ kind }) => kind))].filter((kind) => !turnedToo.includes(kind) || found.every((work) => work.kind !== 'turning'));
  return kinds.map((kind) => {
    const same = found.filter((work) => work.kind === kind || (kind === 'turning' && turnedToo.includes(work.kind)));
    return same.reduce((most, work) => ((work.diameter ?? 0) > (most.diameter ?? 0) ? { ...work, kind } : most), { ...same[0]!, kind });
  });
}

function ofSizes(setUp: SetUp, { sizes }: Cut): readonly Work[] {
  return sizes.flatMap((size): readonly Work[] => {
    switch (size.kind) {
      case 'hole': {
        const diameter = size.diameter.value;
        if (size.finish === 'drilled') return [{ kind: 'drilling', diameter, ...(size.tool === undefined ? {} : { tool: size.tool }) }];
        if (size.finish === 'reamed') return [{ kind: 'drilling', diameter }, { kind: 'reaming', diameter }];
        return [size.finish === 'bored' || setUp.machine === 'lathe' ? { kind: 'boring', diameter } : { kind: 'milling' }];
      }
      case 'counterbore':
        return [{ kind: setUp.machine === 'lathe' ? 'boring' : 'counterboring', diameter: size.diameter.value }];
      case 'countersink':
        return [{ kind: 'countersinking', diameter: size.diameter.value }];
      case 'tapping':
        return [{ kind: 'tapping', diameter: size.thread.major, tool: size.thread.designation }];
      case 'external-thread':
        return [{ kind: 'threading', diameter: size.thread.major, tool: size.thread.designation }];
      case 'internal-thread':
        return [{ kind: size.method === 'tap' ? 'tapping' : 'screw-cutting', diameter: size.thread.major, tool: size.thread.designation }];
      case 'centre-hole':
        return [{ kind: 'centring', diameter: size.outside, tool: size.designation }];
      case 'diameter':
      case 'radius':
      case 'arc-slot':
      case 'arc-sides':
      case 'angle':
      case 'chamfer':
        return [];
    }
  });
}

function turned(part: Part, setUp: SetUp, operation: Operation, cut: Cut): readonly Work[] {
  const axis = vectorOf(setUp.up);
  const steps = turnedSteps(cut);
  const narrow = /part(ing)?\b|groov/i.test(operation.cutter.name);
  const chamfers = cut.sizes.filter((size): size is Extract<Size, { kind: 'chamfer' }> => size.kind === 'chamfer');
  const faces = cut.forms.filter((form) => form.kind === 'half-space');
  return [
    ...faces.map((form): Work => ({ kind: narrow ? 'parting' : 'facing', diameter: diameterBefore(part, operation, form.point, axis) })),
    ...steps.map((step): Work => {
      if (step.internal) return { kind: 'boring', diameter: 2 * Math.max(step.from.radius, step.to.radius) };
      const middle = scale(add(step.from.point, step.to.point), 0.5);
      return { kind: narrow ? 'parting' : 'turning', diameter: diameterBefore(part, operation, middle, axis) };
    }),
    ...chamfers.map(({ ring }): Work => ({ kind: 'chamfering', diameter: 2 * ring.radius })),
  ];
}

function milled({ cutter }: Operation, { forms }: Cut): readonly Work[] {
  if (forms.every(({ kind }) => kind === 'revolution')) return [];
  if (cutter.width === undefined) return [{ kind: 'milling' }];
  return [{ kind: 'sawing', ...(cutter.diameter === undefined ? {} : { diameter: cutter.diameter }) }];
}
