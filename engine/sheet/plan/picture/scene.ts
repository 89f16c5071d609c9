import type { Vector2 } from '../../../geometry/vector.js';
import type { Part } from '../../../part/part.js';
import type { Solid } from '../../../solid/model.js';
import { mergedSolid } from '../../../solid/merge.js';
import type { Camera, View, ViewCurve } from '../../../view/model.js';
import { project } from '../../../view/project.js';
import { pictureOf } from '../../operations/picture.js';
import { chainOf } from '../../say/extremes.js';
import type { RunGround } from '../plan-ground.js';
import { coveringOf } from './covering.js';
import { hullOf } from './hull.js';
import type { FinishedSight, Scene } from './operation-picture.js';
import { planCamera } from './plan-camera.js';
import { threadCurves } from './thread-curves.js';

/** Larger than this nothing is drawn, paper mm for one mm of the part. */
const largest = 5;

/**
 * How all pictures of a set-up are seen, at a share of the scale that fills the room: at one scale, so that the work is followed from one to the next.
 * @param finished the part when all is done.
 */
export function sceneOf(part: Part, { run, states, holding }: RunGround, finished: Solid, room: { readonly width: number; readonly height: number }): (share: number) => Scene {
  const camera = planCamera(run.setUp);
  const wholes = new Map<Solid, Solid>();
  const wholeOf = (work: Solid): Solid => {
    const known = wholes.get(work) ?? (holding === undefined ? work : mergedSolid([work, holding]));
    wholes.set(work, known);
    return known;
  };
  const views = new Map<Solid, View>();
  const viewOf = (work: Solid): View => {
    const known = views.get(work) ?? pictureOf(wholeOf(work), camera);
    views.set(work, known);
    return known;
  };
  const added = part.operations.flatMap((operation) => threadCurves(part, operation, camera));
  const threadsOf = (work: Solid): readonly ViewCurve[] =>
    added.length === 0 ? [] : project(wholeOf(work), camera, { hidden: false, smooth: true, added }).curves.filter(({ name }) => name !== undefined);
  const sight = states.every(({ after }) => after === finished) ? undefined : sightOf(finished, holding, camera);
  const { low, high } = viewOf(states[0]!.before).box;
  const most = Math.min(room.width / (high[0] - low[0]), room.height / (high[1] - low[1]), largest);
  const outline = viewOf(states[0]!.before).curves.flatMap(({ geometry }) => chainOf(geometry));
  return (share) => {
    const factor = most * share;
    return {
      camera,
      factor,
      hull: hullOf(outline.map(([x, y]): Vector2 => [x * factor, y * factor])),
      box: { left: low[0] * factor, right: high[0] * factor, bottom: low[1] * factor, top: high[1] * factor },
      ...(holding === undefined ? {} : { holding }),
      ...(sight === undefined ? {} : { finished: sight }),
      wholeOf,
      viewOf,
      threadsOf,
    };
  };
}

/** The sharp edges and outlines of the finished part, as if nothing but what holds the work stood before it. */
function sightOf(solid: Solid, holding: Solid | undefined, camera: Camera): FinishedSight {
  const { curves } = project(solid, camera, { hidden: false });
  return { solid, edges: curves.map(({ geometry }) => geometry), isCovered: holding === undefined ? () => false : coveringOf(holding, solid, camera) };
}
