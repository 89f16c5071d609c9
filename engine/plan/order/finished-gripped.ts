import type { Finding } from '../finding.js';
import type { FaceTag } from '../../solid/model.js';
import { commonPractice, frameOf, isFirst, type Check } from './context.js';
import { sparing } from './grip-chuck.js';
import { gripStations } from './grip-vice.js';
import { place } from './placed.js';
import { alongSpindle, roundGrip } from './round-grip.js';
import { jawFaces } from './vice-jaws.js';

/** Surfaces as fine as this show the jaws, Ra in micrometres: common practice. */
const fine = 1.6;

/** A finished surface, fine or to a fit, that is gripped afterwards. */
export const finishedGripped: Check = (context, state) => {
  const { setUp, operation, before } = state;
  const kind = setUp.grip?.kind;
  if (kind === undefined || kind === 'between centres' || kind === 'clamps' || kind === 'fixture' || !isFirst(context, state) || sparing.test(setUp.holding)) return [];
  const frame = frameOf(context, state);
  const stations = gripStations(context, state);
  if (stations[0].axis !== stations[1].axis) return [];
  const faces =
    kind === 'vice'
      ? jawFaces(before, frame, stations).flatMap(({ face }) => face?.faces ?? [])
      : (roundGrip(place(before, frame), frame, ...(stations.map(({ value, axis }) => alongSpindle(frame, value, axis)).sort((a, b) => a - b) as [number, number]))?.faces ?? []);
  const tags = [...new Map(faces.map((face) => before.faces[face]!.tag).map((tag) => [`${tag.cut} ${tag.face}`, tag])).values()];
  return tags.flatMap((tag): readonly Finding[] => {
    const finish = finishOf(context.part.operations.flatMap(({ cuts }) => cuts), tag);
    if (finish === undefined) return [];
    const soft = kind === 'vice' ? 'soft jaws, or card between' : 'a split bush or soft jaws';
    return [{ check: 'finished surface gripped', operation: operation.number, gravity: 'warning', figures: { cut: tag.cut, face: tag.face, ...finish.figures }, sentence: [`The ${kind === 'vice' ? 'vice' : 'chuck'} grips a finished surface, ${finish.words}: ${soft} keep the marks of the jaws off it`], source: commonPractice }];
  });
};

function finishOf(cuts: Parameters<Check>[0]['part']['operations'][number]['cuts'], tag: FaceTag): { readonly words: string; readonly figures: Finding['figures'] } | undefined {
  const cut = cuts.find(({ id }) => id === tag.cut);
  if (cut === undefined) return undefined;
  const texture = cut.faces[tag.face]?.texture;
  const fit = cut.sizes.flatMap((size) => (size.kind === 'diameter' && !size.internal && size.diameter.tolerance?.kind === 'fit' ? [size.diameter.tolerance.class] : []))[0];
  if (texture !== undefined && texture <= fine) return { words: `${cut.name} (Ra ${texture}${fit === undefined ? '' : `, ${fit}`})`, figures: { texture, ...(fit === undefined ? {} : { fit }) } };
  return fit === undefined ? undefined : { words: `${cut.name} (${fit})`, figures: { fit } };
}
