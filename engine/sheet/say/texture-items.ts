import type { Part } from '../../part/part.js';
import type { ViewPlan } from '../views/plan.js';
import { vectorOf } from '../../part/author/directions.js';
import { dot, type Vector2 } from '../../geometry/vector.js';
import type { PrintItem, Target } from './item.js';

/** Texture signs for flat and turned faces that have their own; holes and slots along an arc carry theirs in the callout. */
export function textureItems(part: Part): readonly PrintItem[] {
  const items: PrintItem[] = [];
  for (const operation of part.operations)
    for (const cut of operation.cuts) {
      if (cut.sizes.some((size) => size.kind === 'hole' || size.kind === 'countersink' || size.kind === 'counterbore' || size.kind === 'arc-slot')) continue;
      for (const [face, { texture }] of Object.entries(cut.faces)) {
        if (texture === undefined) continue;
        items.push({
          id: `texture ${cut.id} ${face}`,
          about: cut.id,
          lines: [`Ra ${texture}`],
          texture: true,
          record: { kind: 'texture', feature: cut.id, nominal: texture, measure: 'note' },
          find: (plan) => {
            const targets = linesOfFace(plan, cut.id, face);
            return targets.length === 0 ? undefined : { kind: 'leader', cost: plan.section === undefined ? 0 : 0.3, targets };
          },
        });
      }
    }
  return items;
}

/** Where along a line a leader may point, the middle first. */
const shares = [0.5, 0.3, 0.7, 0.15, 0.85];

/** Points on the straight lines that a face shows in a view, those of the longest first. */
function linesOfFace(plan: ViewPlan, cut: string, face: string): readonly Target[] {
  const edgeOn = (surface: number): boolean => {
    const shape = plan.solid.surfaces[surface]!;
    return shape.kind !== 'plane' || Math.abs(dot(shape.normal, vectorOf(plan.eye))) < 1e-9;
  };
  const surfaces = new Set(
    plan.solid.faces.filter(({ tag }) => tag.cut === cut && tag.face === face).map(({ surface }) => surface).filter(edgeOn),
  );
  const lines: { ends: readonly [Vector2, Vector2]; length: number }[] = [];
  for (const curve of plan.view.curves) {
    if (!curve.visible || curve.geometry.kind !== 'line' || !curve.surfaces.some((surface) => surfaces.has(surface))) continue;
    // A curved face is pointed at on its outline, a flat one where it is seen edge-on.
    const curved = curve.surfaces.some((surface) => surfaces.has(surface) && plan.solid.surfaces[surface]!.kind !== 'plane');
    if (curved && curve.role !== 'silhouette') continue;
    const { from, to } = curve.geometry;
    lines.push({ ends: [from, to], length: Math.hypot(from[0] - to[0], from[1] - to[1]) });
  }
  return lines
    .sort((a, b) => b.length - a.length)
    .slice(0, 2)
    .flatMap(({ ends: [a, b] }) => shares.map((t): Target => ({ at: [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t], radius: 0, end: 'arrow' })));
}
