import { scale } from '../../geometry/vector.js';
import type { Cut } from '../../part/cut.js';
import type { Form } from '../../part/form.js';
import type { Operation, Part } from '../../part/part.js';
import type { Station } from '../../part/station.js';
import { axes, indexOf, vectorOf } from '../../part/author/directions.js';
import { formsToSolid, stockForms } from '../../solid/build.js';
import { removedSolid } from '../../solid/combine.js';
import type { Kernel } from '../../solid/kernel.js';
import type { Solid } from '../../solid/model.js';
import { metalWithin } from '../../solid/within.js';
import type { TaggedForm } from '../../solid/tagged-form.js';
import type { Blank } from './blank.js';
import type { Side } from './blank-sides.js';
import { boundsOfSolid, formOfBounds, partFrame, type Bounds } from './bounds.js';
import { facesOf } from './blank-extent.js';
import { formsOfRegion, type Region } from './region.js';

/** Less than this is a matter of rounding, mm3. */
const nothing = 1e-4;

/** A cut that the piece does without although its place lies in the blank. */
export interface LeftOut {
  readonly operation: number;
  readonly cut: Cut;
  /** Clear distance from what the nearest rehearsed cut takes, along the axes of the part, mm. */
  readonly gap: number;
}

export interface Needed {
  /** Ids of the cuts that the piece gets before and with the rehearsed ones. */
  readonly cuts: ReadonlySet<string>;
  readonly leftOut: readonly LeftOut[];
}

/**
 * What the rehearsed cuts need first: earlier cuts that take metal where one of them is rehearsed, and those that make the
 * faces from which their set-ups count and by which they hold, where the blank does not have them already. A thread is kept
 * only where it is rehearsed itself.
 */
export function neededCuts(kernel: Kernel, part: Part, blank: Blank, regions: readonly Region[]): Needed {
  const rehearsed = new Set(regions.map(({ operation }) => operation));
  const last = Math.max(...rehearsed);
  const faced = blank.toFace.map((side): TaggedForm => ({ cut: 'facing', form: beyond(side) }));
  const body = formsToSolid(kernel, stockForms({ ...part, stock: blank.stock }), faced, { segments: 32 });
  const inRegions = regions.map((region) => ({ region, metal: removedSolid(kernel, body, formsOfRegion(region), { segments: 32 }), core: formOfBounds(region.core, region.frame) }));
  const bodyBox = boundsOfSolid(body, partFrame)!;
  const ofBlank = new Set(Object.values(blank.stock.faces).flatMap(({ stations }) => stations));
  const earlier = part.operations.filter(({ number }) => number <= last);
  const kept = new Set<string>();
  for (const operation of earlier)
    for (const cut of operation.cuts)
      if (rehearsed.has(operation.number) || inRegions.some(({ region, metal }) => region.operation > operation.number && taken(kernel, metal, cut) > nothing)) kept.add(cut.id);
  // Faces to set from and to hold by: the set-ups of what is kept may ask for more, until nothing is added.
  for (let before = -1; before !== kept.size; ) {
    before = kept.size;
    const wanted = facesNeeded(part, kept, last).filter((station) => !ofBlank.has(station.id) && isInside(bodyBox, station));
    for (const operation of earlier)
      for (const cut of operation.cuts) {
        const makes = Object.values(cut.faces).some(({ stations }) => stations.some((id) => wanted.some((station) => station.id === id)));
        if (makes && !kept.has(cut.id) && taken(kernel, body, cut) > nothing) kept.add(cut.id);
      }
  }
  return { cuts: kept, leftOut: leftOutOf(kernel, earlier, kept, body, inRegions.map(({ region }) => region)) };
}

/** All that lies outside of a side. */
function beyond({ axis, end, at }: Side): Form {
  const normal = vectorOf(`${end === 'low' ? '-' : '+'}${axis}`);
  return { kind: 'half-space', point: scale(normal, end === 'low' ? -at : at), normal, face: 'face' };
}

/** The faces of the part on which the holes of a cut begin. */
export function entriesOf(part: Part, cut: Cut): readonly Station[] {
  return cut.sizes.flatMap((size) => {
    if (!('points' in size) || !('direction' in size)) return [];
    const axis = axes.find((each) => Math.abs(size.direction[indexOf(each)]) > 1 - 1e-9);
    if (axis === undefined) return [];
    return part.stations.filter((station) => station.axis === axis && size.points.some((point) => Math.abs(point[indexOf(axis)] - station.value) < 1e-6));
  });
}

/** The faces that the set-ups and the holes of what is kept need. */
export function facesNeeded(part: Part, kept: ReadonlySet<string>, upTo: number): readonly Station[] {
  const earlier = part.operations.filter(({ number }) => number <= upTo);
  const setUps = new Set(earlier.filter(({ cuts }) => cuts.some(({ id }) => kept.has(id))).map(({ setUp }) => setUp));
  return [
    ...part.setUps.filter(({ id }) => setUps.has(id)).flatMap((setUp) => facesOf(part, setUp)),
    ...earlier.flatMap(({ cuts }) => cuts.filter(({ id }) => kept.has(id)).flatMap((cut) => entriesOf(part, cut))),
  ];
}

/** A face can be made where there is metal. */
const isInside = ({ low, high }: Bounds, { axis, value }: Station): boolean => value > low[indexOf(axis)] - 1e-6 && value < high[indexOf(axis)] + 1e-6;

const tool = (cut: Cut): TaggedForm[] => cut.forms.map((form) => ({ cut: cut.id, form }));

/** Volume that a cut takes from some metal, mm3. */
function taken(kernel: Kernel, metal: Solid, cut: Cut): number {
  if (cut.forms.length === 0 || metal.triangles.length === 0) return 0;
  return metalWithin(kernel, metal, tool(cut), 32).volume;
}

function leftOutOf(kernel: Kernel, earlier: readonly Operation[], kept: ReadonlySet<string>, body: Solid, regions: readonly Region[]): readonly LeftOut[] {
  const cores = regions.flatMap(({ core, frame }) => boundsOfSolid(metalWithin(kernel, body, [{ cut: 'core', form: formOfBounds(core, frame) }], 32), partFrame) ?? []);
  return earlier.flatMap((operation) =>
    operation.cuts.flatMap((cut): LeftOut[] => {
      if (kept.has(cut.id) || cut.forms.length === 0) return [];
      const chips = boundsOfSolid(metalWithin(kernel, body, tool(cut), 32), partFrame);
      if (chips === undefined) return [];
      return [{ operation: operation.number, cut, gap: Math.min(...cores.map((core) => gapBetween(core, chips))) }];
    }),
  );
}

/** Clear distance between two boxes, mm; nought where they meet. */
function gapBetween(a: Bounds, b: Bounds): number {
  const apart = [0, 1, 2].map((i) => Math.max(0, a.low[i]! - b.high[i]!, b.low[i]! - a.high[i]!));
  return Math.hypot(...apart);
}
