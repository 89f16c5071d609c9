import type { LoadCheck } from '../../part/loads.js';
import { findMaterial } from '../../trade/materials.js';
import { columnLoad } from '../../trade/sums/column.js';
import { shearAreas } from '../../trade/sums/thread-engagement.js';

/** What a load does to something, and how many times it could grow. Figures in MPa, N or mm as the unit says. */
export interface Judged {
  readonly what: string;
  readonly kind: LoadCheck['kind'];
  readonly by: LoadCheck['by'];
  readonly material: string;
  readonly figure: number;
  readonly unit: 'MPa' | 'N';
  /** What the figure may be, or the load that is borne. */
  readonly allowed: number;
  readonly safety: number;
  /** The least that common practice asks. */
  readonly asked: number;
  readonly source: string;
}

/** Shear yield over tensile yield by distortion energy (von Mises). */
const SHEAR = 0.577;

/**
 * Factors that are usual at this size of work, against giving way (columns, stripping), yield (pins, screws) and the bearing
 * pressure of the table: common practice.
 */
const asked: Readonly<Record<LoadCheck['kind'], number>> = { column: 5, shear: 4, 'pin-bending': 3, bearing: 1, slide: 1, screw: 4, stripping: 4, 'own-weight': 5 };

/** Stress against what the material bears. */
export function judge(check: LoadCheck): Judged {
  const material = findMaterial(check.material);
  const common = { what: check.what, kind: check.kind, by: check.by, material: material.name, asked: asked[check.kind] };
  const stress = (figure: number, allowed: number, source: string): Judged => ({ ...common, figure, unit: 'MPa', allowed, safety: allowed / figure, source });
  const load = (figure: number, allowed: number, source: string): Judged => ({ ...common, figure, unit: 'N', allowed, safety: allowed / figure, source });
  switch (check.kind) {
    case 'column': {
      const { section, length, ends } = check;
      // Fixed by its bushes only in the plane of their axes, and there by custom not counted on in full.
      const slenderness = ((ends === 'fixed' ? 0.65 : 1) * length) / Math.sqrt(section.weakMoment / section.area);
      const { load: most, regime } = columnLoad(section.area, slenderness, material.yieldStrength, material.modulus * 1000);
      return load(check.force, most, `${regime === 'Euler' ? 'Euler' : 'J. B. Johnson'} column formula, textbooks of machine elements`);
    }
    case 'shear':
      return stress(check.force / (check.planes * (Math.PI / 4) * check.diameter ** 2), SHEAR * material.yieldStrength, 'F / (planes x area); shear yield 0.577 of yield (distortion energy)');
    case 'pin-bending': {
      // Borne in the middle of each cheek, loaded evenly over the middle: M = F (b + 2 t) / 8, section modulus pi d^3 / 32.
      const moment = (check.force * (check.middle + 2 * check.side)) / 8;
      return stress(moment / ((Math.PI * check.diameter ** 3) / 32), material.yieldStrength, 'beam on two supports with an even load over the middle, textbook beam table');
    }
    case 'bearing':
      return stress(check.force / (check.diameter * check.length), check.limit?.pressure ?? material.bearingPressure, `F / projected area; limit: ${check.limit?.source ?? 'the table of materials'}`);
    case 'slide':
      return stress(check.force / (check.width * check.length), material.bearingPressure, 'F / area; limit of the table of materials');
    case 'screw':
      return stress(check.force / check.thread.stressArea, material.yieldStrength, 'F / stress area');
    case 'stripping': {
      const { screw, nut } = shearAreas(check.thread);
      const most = (check.engagement / 2) * Math.min(screw * findMaterial(check.screw).tensileStrength, nut * material.tensileStrength);
      return load(check.force, most, 'ASME B1.1 appendix B, FED-STD-H28');
    }
    case 'own-weight': {
      const weight = check.section.area * check.length * 1e-9 * material.density * 9.80665;
      return stress((weight * check.length * check.section.halfDepth) / 8 / check.section.strongMoment, material.yieldStrength, 'M = W L / 8, textbook beam table');
    }
  }
}
