import type { Vector2 } from '../../../geometry/vector.js';
import type { Solid } from '../../../solid/model.js';
import { mergedSolid } from '../../../solid/merge.js';
import type { View } from '../../../view/model.js';
import { pictureOf } from '../../operations/picture.js';
import { chainOf } from '../../say/extremes.js';
import type { RunGround } from '../plan-ground.js';
import { hullOf } from './hull.js';
import type { Scene } from './operation-picture.js';
import { planCamera } from './plan-camera.js';

/** Larger than this nothing is drawn, paper mm for one mm of the part. */
const largest = 5;

/** How all pictures of a set-up are seen, at a share of the scale that fills the room: at one scale, so that the work is followed from one to the next. */
export function sceneOf({ run, states, holding }: RunGround, room: { readonly width: number; readonly height: number }): (share: number) => Scene {
  const camera = planCamera(run.setUp);
  const views = new Map<Solid, View>();
  const viewOf = (work: Solid): View => {
    const known = views.get(work) ?? pictureOf(holding === undefined ? work : mergedSolid([work, holding]), camera);
    views.set(work, known);
    return known;
  };
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
      viewOf,
    };
  };
}
