import { acrossOf, axisOf, indexOf, opposite, senseOf, vectorOf } from '../../part/author/directions.js';
import type { Part } from '../../part/part.js';
import type { Axis, Direction } from '../../part/station.js';
import { cutSolid } from '../../solid/combine.js';
import type { Kernel } from '../../solid/kernel.js';
import type { Solid } from '../../solid/model.js';
import { flatDiagonals } from '../../view/flats.js';
import { project } from '../../view/project.js';
import { scale } from '../../geometry/vector.js';
import { axisFrame } from '../../part/author/cuts/pocket.js';
import { polygonOutline } from '../../part/author/outlines.js';
import { axesOfPart } from './axes-of-part.js';
import { axisMarks } from './axis-marks.js';
import { edgeMarks, stationsOfSurfaces } from './marks.js';
import { cameraOf, orientationsRound, rightFrom, type Orientation } from './orientation.js';
import type { SectionPlane, ViewPlace, ViewPlan } from './plan.js';
import { threadLines } from './thread-lines.js';

const titles: Readonly<Record<ViewPlace, string>> = {
  front: 'front',
  right: 'from the right',
  left: 'from the left',
  above: 'from above',
  below: 'from below',
  rear: 'from the rear',
};

/** Makes one view: projection with thread lines, and the marks that dimensions can hold on to. */
export function viewPlan(
  part: Part,
  solid: Solid,
  spec: { readonly id: string; readonly title: string; readonly place: ViewPlan['place']; readonly section?: SectionPlane },
  orientation: Orientation,
): ViewPlan {
  const camera = cameraOf(orientation);
  const view = project(solid, camera, { added: [...threadLines(part, camera, spec.section), ...flatDiagonals(solid, camera)] });
  const edges = edgeMarks(view.curves, orientation.right, orientation.up, stationsOfSurfaces(part, solid));
  return {
    ...spec,
    ...orientation,
    solid,
    view,
    marks: [...edges, ...axisMarks(part, view, orientation, spec.section)],
  };
}

/** The places of the six views, the preferred side first: the left hand prefers as in a mirror. */
const placesOf = (part: Part): readonly ViewPlace[] =>
  part.hand === 'left' ? ['front', 'left', 'right', 'above', 'below', 'rear'] : ['front', 'right', 'left', 'above', 'below', 'rear'];

/** The six views along the axes. */
export function outsideViews(part: Part, solid: Solid): readonly ViewPlan[] {
  const round = orientationsRound(part.attitude.front, part.attitude.up);
  return placesOf(part).map((place) =>
    viewPlan(part, solid, { id: place === 'front' ? 'front view' : `view ${titles[place]}`, title: titles[place], place }, round[place]),
  );
}

/**
 * Sections worth a look: planes square to an axis through the axes of holes and through datums with inner walls about them;
 * those through most features first, `most` in all.
 */
export function sectionPlanes(part: Part, most = 5): readonly SectionPlane[] {
  const abouts = new Set(part.stations.flatMap((station) => (station.placing.kind === 'pair' ? [station.placing.about] : [])));
  const middles = part.stations.filter((station) => abouts.has(station.id));
  const found = new Map<string, { plane: SectionPlane; cuts: Set<string>; weight: number }>();
  for (const round of axesOfPart(part)) {
    if (round.kind !== 'hole') continue;
    for (const axis of ['x', 'y', 'z'] as const) {
      if (Math.abs(round.direction[indexOf(axis)]) > 1e-9) continue;
      const value = round.from[indexOf(axis)];
      const key = `${axis} ${value.toFixed(6)}`;
      const known = found.get(key);
      if (known === undefined) {
        // A plane of symmetry tells most.
        const middle = middles.some((station) => station.axis === axis && Math.abs(station.value - value) < 1e-6);
        found.set(key, { plane: { axis, value, eye: eyeFor(part, axis) }, cuts: new Set([round.cut]), weight: middle ? 2 : 0 });
      } else known.cuts.add(round.cut);
    }
  }
  for (const { id, axis, value } of middles) {
    const key = `${axis} ${value.toFixed(6)}`;
    const cuts = walledAbout(part, id);
    if (cuts.length > 0 && !found.has(key)) found.set(key, { plane: { axis, value, eye: eyeFor(part, axis) }, cuts: new Set(cuts), weight: 2 });
  }
  return [...found.values()]
    .sort((a, b) => b.weight + b.cuts.size - a.weight - a.cuts.size || compare(a.plane, b.plane))
    .slice(0, most)
    .map(({ plane }) => plane);
}

/** The cuts that have walls on both sides of a line: pockets and grooves, into which a section through the line looks. */
function walledAbout(part: Part, about: string): readonly string[] {
  const walls = part.stations.flatMap((station) => (station.placing.kind === 'pair' && station.placing.about === about ? [station.id] : []));
  return part.operations.flatMap(({ cuts }) =>
    cuts.flatMap((cut) => {
      const faces = new Set(Object.values(cut.faces).flatMap(({ stations }) => stations));
      return walls.filter((id) => faces.has(id)).length >= 2 ? [cut.id] : [];
    }),
  );
}

/** A section is looked at as the outside view next to it would be: from the front, from above, from the right. */
function eyeFor(part: Part, axis: Axis): Direction {
  const { front, up } = part.attitude;
  const right = rightFrom(up, front);
  // The left hand is looked at as in a mirror: from the side on which its mirror image is looked at.
  const side = part.hand === 'left' ? opposite(right) : right;
  return [front, up, side].find((direction) => axisOf(direction) === axis)!;
}

const compare = (a: SectionPlane, b: SectionPlane): number =>
  a.axis < b.axis ? -1 : a.axis > b.axis ? 1 : a.value - b.value;

/** Cuts the solid at a plane and looks at what is left from the side taken away. */
export function sectionView(kernel: Kernel, part: Part, whole: Solid, plane: SectionPlane, id: string): ViewPlan {
  const normal = vectorOf(plane.eye);
  const point = scale(normal, plane.value * senseOf(plane.eye));
  const solid = cutSolid(kernel, whole, [{ cut: 'section', form: { kind: 'half-space', point, normal, face: 'A' } }]);
  return viewPlan(part, solid, { id, title: id, place: 'section', section: plane }, sectionOrientation(part, plane));
}

/**
 * The front view of a turned part with a bore, as a half section: the quarter before the axis and below it is taken away, so
 * that one half shows the outside and the other the inside (ISO 128-3).
 */
export function halfSection(kernel: Kernel, part: Part, whole: Solid): ViewPlan | undefined {
  const bored = axesOfPart(part).find((round) => round.kind === 'hole' || round.internal === true);
  if (part.attitude.kind !== 'turned' || bored === undefined) return undefined;
  const orientation = orientationsRound(part.attitude.front, part.attitude.up).front;
  const along = axisOf(orientation.right);
  if (Math.abs(bored.direction[indexOf(along)]) < 1 - 1e-9) return undefined;
  const { eye, up } = orientation;
  const side = opposite(up);
  const value = bored.from[indexOf(axisOf(eye))];
  const level = bored.from[indexOf(axisOf(up))];
  const reach = 1000;
  const [low, high] = senseOf(eye) > 0 ? [value, value + reach] : [value - reach, value];
  const [bottom, top] = senseOf(side) > 0 ? [level, level + reach] : [level - reach, level];
  const corners = (u: readonly [number, number], v: readonly [number, number]): readonly (readonly [number, number])[] => [[u[0], v[0]], [u[1], v[0]], [u[1], v[1]], [u[0], v[1]]];
  const frame = axisFrame(along);
  const eyeFirst = acrossOf(along)[0] === axisOf(eye);
  const [u, v] = eyeFirst ? ([[low, high], [bottom, top]] as const) : ([[bottom, top], [low, high]] as const);
  // Only the two faces through the axis cut metal; the far ones lie in the air.
  const cutU = senseOf(eyeFirst ? eye : side) > 0 ? 3 : 1;
  const cutV = senseOf(eyeFirst ? side : eye) > 0 ? 0 : 2;
  const faces = [0, 1, 2, 3].map((i) => (i === cutU ? (eyeFirst ? 'A' : 'B') : i === cutV ? (eyeFirst ? 'B' : 'A') : 'air'));
  const form = { kind: 'prism' as const, frame, outline: polygonOutline(corners(u, v), faces), low: -reach, high: reach, lowFace: 'air', highFace: 'air' };
  const solid = cutSolid(kernel, whole, [{ cut: 'section', form }]);
  const plane: SectionPlane = { axis: axisOf(eye), value, eye, half: { side, axis: level } };
  const plan = viewPlan(part, solid, { id: 'front view', title: 'half section', place: 'front', section: plane }, orientation);
  // Where outside and inside meet only the centre line is drawn, not the edge of the cut.
  const edge = new Set(solid.faces.filter(({ tag }) => tag.cut === 'section' && tag.face === 'B').map(({ surface }) => surface));
  const curves = plan.view.curves.filter((curve) => !(curve.geometry.kind === 'line' && curve.surfaces.some((surface) => edge.has(surface))));
  return { ...plan, view: { ...plan.view, curves } };
}

/** A section keeps the attitude of the view that it stands for. */
export function sectionOrientation(part: Part, plane: SectionPlane): Orientation {
  const round = orientationsRound(part.attitude.front, part.attitude.up);
  const match = (['front', 'above', 'right', 'left', 'below', 'rear'] as const).find((place) => round[place].eye === plane.eye);
  return round[match ?? 'front'];
}

