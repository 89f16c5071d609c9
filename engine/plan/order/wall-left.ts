import { length, scale, subtract, unit } from '../../geometry/vector.js';
import { noWall, roundHole, slenderWall, thinWalls } from '../data/walls.js';
import type { Finding } from '../finding.js';
import { turnedSteps } from '../turned-steps.js';
import { acrossRound, commonPractice, figureOf, frameOf, mm, plain, type Check, type OrderContext } from './context.js';
import { thinnestFlat } from './flat-walls.js';
import { thinnestRound } from './hole-walls.js';

/** The wall that stays beside a cut, under it and round a hole. */
export const wallLeft: Check = (context, state) => {
  const { operation, after, before, setUp } = state;
  if (after === before || setUp.machine === 'bench') return [];
  const { part, material } = context;
  const limit = thinWalls[material?.kind ?? 'unknown'];
  const frame = frameOf(context, state);
  const nameOf = (id: string): string => (id === 'stock' ? 'the face of the bar' : part.operations.flatMap(({ cuts }) => cuts).find((cut) => cut.id === id)?.name ?? id);
  const finding = (gravity: Finding['gravity'], figures: Finding['figures'], ...sentence: Finding['sentence']): Finding => ({ check: 'wall left', operation: operation.number, gravity, figures, sentence, source: commonPractice });
  const found: Finding[] = [];
  for (const cut of operation.cuts) {
    const wall = thinnestFlat(after, cut, frame.z, limit, slenderWall);
    if (wall === undefined) continue;
    const figures = { wall: figureOf(wall.thickness), height: figureOf(wall.height), limit };
    if (wall.thickness < noWall) found.push(finding('fatal', figures, `Nothing is left between ${cut.name} and ${nameOf(wall.other)}: `, mm(wall.thickness)));
    else if (wall.thickness < limit) found.push(finding('warning', figures, `A thin wall of `, mm(wall.thickness), ` stays between ${cut.name} and ${nameOf(wall.other)}, and `, mm(limit), ' is stiff: back it up, and take the last cuts light'));
    else if (wall.height > slenderWall * wall.thickness) found.push(finding('warning', { ...figures, slender: figureOf(wall.height / wall.thickness) }, 'The wall of ', mm(wall.thickness), ` between ${cut.name} and ${nameOf(wall.other)} is `, mm(wall.height), ` high, ${plain(wall.height / wall.thickness)} times as much, and gives way from ${slenderWall} on: cut both of its sides down in turns`));
  }
  const own = new Set(operation.cuts.map(({ id }) => id));
  for (const { sizes, name } of operation.cuts)
    for (const size of sizes) {
      if (size.kind !== 'hole' && size.kind !== 'counterbore') continue;
      const radius = size.diameter.value / 2;
      const wanted = Math.min(roundHole.diameters * size.diameter.value, roundHole.most, 2 * limit);
      const depth = size.depth?.value ?? throughAll(context.part);
      const walls = size.points.flatMap((point) => thinnestRound(after, point, size.direction, radius, [0, depth], own, wanted) ?? []);
      const wall = walls.sort((a, b) => a.thickness - b.thickness)[0];
      if (wall === undefined || wall.thickness >= wanted) continue;
      const figures = { wall: figureOf(wall.thickness), diameter: figureOf(size.diameter.value), limit: figureOf(wanted) };
      found.push(finding(wall.thickness < noWall ? 'fatal' : 'warning', figures, `Between ${name} `, acrossRound(size.diameter.value), ` and ${nameOf(wall.other)} `, mm(wall.thickness), ' of metal stays, and ', mm(wanted), ' is wanted (half the diameter, or ', mm(Math.min(roundHole.most, 2 * limit)), '): the drill breaks out there if it wanders'));
    }
  for (const step of operation.cuts.flatMap(turnedSteps)) {
    if (!step.internal) continue;
    const way = subtract(step.to.point, step.from.point);
    if (length(way) < 1e-6) continue;
    const radius = Math.max(step.from.radius, step.to.radius);
    const wall = thinnestRound(after, step.from.point, unit(way), radius, [0, length(way)], own, 2 * limit);
    if (wall !== undefined && wall.thickness < limit) found.push(finding(wall.thickness < noWall ? 'fatal' : 'warning', { wall: figureOf(wall.thickness), limit }, 'A thin wall of ', mm(wall.thickness), ` stays round ${step.cut.name}, to ${nameOf(wall.other)}: bore before the outside is brought down, or plug it`));
  }
  for (const step of operation.cuts.flatMap(turnedSteps)) {
    if (step.internal) continue;
    const wall = turnedOver(state, step, 2 * limit);
    if (wall !== undefined && wall.thickness < limit) found.push(finding(wall.thickness < noWall ? 'fatal' : 'warning', { wall: figureOf(wall.thickness), limit }, 'A thin wall of ', mm(wall.thickness), ` stays under ${step.cut.name}, to ${nameOf(wall.other)}: plug the bore while turning`));
  }
  return found;
};

/** No hole of a part is deeper than its stock is long and wide, mm. */
const throughAll = ({ stock }: OrderContext['part']): number => stock.length + Math.max(...stock.section);

/** The metal between a turned outside and the nearest hole under it along the same way: seen from that hole. */
function turnedOver({ after }: Parameters<Check>[1], step: ReturnType<typeof turnedSteps>[number], within: number): { readonly thickness: number; readonly other: string } | undefined {
  const way = subtract(step.to.point, step.from.point);
  if (length(way) < 1e-6) return undefined;
  const direction = unit(way);
  const radius = Math.min(step.from.radius, step.to.radius);
  let best: { thickness: number; other: string } | undefined;
  for (const { tag, surface: index } of after.faces) {
    const surface = after.surfaces[index]!;
    if (surface.kind !== 'cylinder' || tag.cut === step.cut.id || Math.abs(surface.axis[0] * direction[0] + surface.axis[1] * direction[1] + surface.axis[2] * direction[2]) < 1 - 1e-9) continue;
    const offset = subtract(surface.origin, step.from.point);
    const aside = length(subtract(offset, scale(direction, offset[0] * direction[0] + offset[1] * direction[1] + offset[2] * direction[2])));
    const thickness = radius - aside - surface.radius;
    if (thickness > 1e-3 && thickness < within && reaches(after, index, step.from.point, direction, length(way)) && (best === undefined || thickness < best.thickness)) best = { thickness, other: tag.cut };
  }
  return best;
}

/** Whether a surface has facets between two places along a way, that look at its axis. */
function reaches({ faces, faceOfTriangle, triangles, positions, surfaces }: Parameters<Check>[1]['after'], index: number, start: readonly [number, number, number], direction: readonly [number, number, number], far: number): boolean {
  const surface = surfaces[index]!;
  if (surface.kind !== 'cylinder') return false;
  return faceOfTriangle.some((face, t) => {
    if (faces[face]!.surface !== index) return false;
    const points = [0, 1, 2].map((i) => 3 * triangles[3 * t + i]!).map((at): readonly [number, number, number] => [positions[at]!, positions[at + 1]!, positions[at + 2]!]);
    const heights = points.map((p) => (p[0] - start[0]) * direction[0] + (p[1] - start[1]) * direction[1] + (p[2] - start[2]) * direction[2]);
    if (Math.max(...heights) < 0.05 || Math.min(...heights) > far - 0.05) return false;
    const [a, b, c] = points as [readonly [number, number, number], readonly [number, number, number], readonly [number, number, number]];
    const [e, f] = [subtract(b, a), subtract(c, a)];
    const normal = [e[1] * f[2] - e[2] * f[1], e[2] * f[0] - e[0] * f[2], e[0] * f[1] - e[1] * f[0]] as const;
    const out = subtract(a, surface.origin);
    return normal[0] * out[0] + normal[1] * out[1] + normal[2] * out[2] - (out[0] * direction[0] + out[1] * direction[1] + out[2] * direction[2]) * (normal[0] * direction[0] + normal[1] * direction[1] + normal[2] * direction[2]) < 0;
  });
}
