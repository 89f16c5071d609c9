import { bench, describe } from 'vitest';
import { formsToSolid } from '../../engine/solid/build.js';
import { loadKernel } from '../../engine/solid/kernel.js';
import type { Solid } from '../../engine/solid/model.js';
import { isometricCamera, standardCamera } from '../../engine/view/camera.js';
import type { Camera, View } from '../../engine/view/model.js';
import { prepare } from '../../engine/view/prepared.js';
import { project } from '../../engine/view/project.js';
import { crossheadForms } from '../support/crosshead-forms.js';
import { reflectLines } from '../support/exact-hidden-lines.js';
import { curveLength } from '../support/line-agreement.js';
import { formsToShape } from '../support/open-cascade-forms.js';
import { loadOpenCascade } from '../support/open-cascade.js';
import { plateWithHoles } from '../support/plate.js';
import type { Forms } from '../support/view-forms.js';

/*
 * A view's time, side by side with the exact kernel's pass on the same body, and its growth with the holes of a plate.
 * What depends on the solid alone is prepared once and timed apart. The lines under the table tell what was drawn, so
 * that a faster but different answer is seen.
 */

const kernel = await loadKernel();
const oc = await loadOpenCascade();

const CAMERAS: Readonly<Record<string, Camera>> = {
  above: standardCamera('+z'),
  front: standardCamera('-y'),
  isometric: isometricCamera(),
};

/** Few but enough: the exact kernel takes seconds for a view. */
const OURS = { time: 1000, iterations: 15, warmupIterations: 5, warmupTime: 0 };
const THEIRS = { time: 0, iterations: 3, warmupIterations: 0, warmupTime: 0 };

const solidOf = ({ stock, removed }: Forms): Solid => formsToSolid(kernel, stock, removed);

/** Counts and lengths of what a view shows. */
function checksum({ curves }: View): string {
  const sum = (visible: boolean): string => {
    const chosen = curves.filter((curve) => curve.visible === visible);
    return `${chosen.length} curves ${chosen.reduce((total, { geometry }) => total + curveLength(geometry), 0).toFixed(3)} mm`;
  };
  return `visible ${sum(true)}, hidden ${sum(false)}`;
}

function sideBySide(name: string, forms: Forms): void {
  const solid = solidOf(forms);
  const shape = formsToShape(oc, forms.stock, forms.removed);
  console.log(`${name}: ${solid.triangles.length / 3} facets, 64 in a turn`);
  for (const [view, camera] of Object.entries(CAMERAS)) {
    console.log(`  ${view}: ${checksum(project(solid, camera))}`);
    describe(`${name}, ${view}`, () => {
      bench('ours', () => void project(solid, camera), OURS);
      bench('exact kernel', () => reflectLines(oc, shape, camera).delete(), THEIRS);
    });
  }
  describe(`${name}, once for all views`, () => {
    bench('prepare', () => void prepare({ ...solid }), { ...OURS, iterations: 5 });
  });
}

const plates = new Map<number, Solid>();

sideBySide('crosshead', crossheadForms());
sideBySide('plate of 400 holes', plateWithHoles(400));

for (const [view, camera] of Object.entries(CAMERAS)) {
  describe(`growth, ${view}`, () => {
    for (const count of [25, 100, 400, 1600]) {
      const solid = plates.get(count) ?? solidOf(plateWithHoles(count));
      plates.set(count, solid);
      prepare(solid);
      bench(`${count} holes`, () => void project(solid, camera), { ...OURS, iterations: 5 });
    }
  });
}
