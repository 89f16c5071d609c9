import { describe, expect, it } from 'vitest';
import { drillingForces, millingForce, openingTorque, turningForce } from '../../engine/plan/fixture/cutting-forces.js';

/** Worked examples of forces from specific cutting energy. */
describe('forces of cutting', () => {
  it('turns as in a tool maker’s worked example', () => {
    // A tool maker's page on turning power (read): mild steel, 120 m/min, 3 mm deep, 0.2 mm a turn, 3100 N/mm2, efficiency 0.8: 4.65 kW.
    const force = turningForce(3.1, 3, 0.2);
    expect(force).toBeCloseTo(1860, 9);
    expect((force * (120 / 60)) / 0.8 / 1000).toBeCloseTo(4.65, 9);
  });

  it('turns as in a textbook of manufacturing', () => {
    // A textbook's example (memory): stainless 12.7 to 12.19 mm, 400 a minute, 203.2 mm/min, 4 W s/mm3: about 520 N, 3.2 N m.
    const force = turningForce(4, (12.7 - 12.19) / 2, 203.2 / 400);
    expect(force).toBeGreaterThan(510);
    expect(force).toBeLessThan(525);
    expect((force * (12.445 / 2)) / 1000).toBeCloseTo(3.2, 1);
  });

  it('drills as in a textbook of manufacturing', () => {
    // A textbook's example (memory): magnesium alloy, 10 mm drill, 0.2 mm a turn, 800 a minute, 0.5 W s/mm3: 105 W, 1.25 N m.
    const { torque } = drillingForces(0.5, 10, 0.2);
    expect(torque / 1000).toBeCloseTo(1.25, 9);
    expect((torque / 1000) * ((800 * 2 * Math.PI) / 60)).toBeCloseTo(105, 0);
  });

  it('drills with a thrust of the order of a published pair of torque and thrust', () => {
    // A course on drilling (read): 10 mm, 0.3 mm a turn: about 15 N m and 2500 N. The torque asks for 4 J/mm3; the two lips alone
    // then push with 2571 N, and with the chisel edge, which this reckoning adds, with twice that: on the safe side.
    const { torque, thrust } = drillingForces(4, 10, 0.3);
    expect(torque / 1000).toBeCloseTo(15, 9);
    expect(thrust / 2).toBeGreaterThan(2500);
    expect(thrust / 2).toBeLessThan(2600);
  });

  it('mills as in a textbook of manufacturing', () => {
    // A textbook's example (memory): slab milling 100 wide, 3 deep, 0.25 a tooth, cutter 50 mm of 20 teeth at 100 a minute, 3 W s/mm3:
    // 7.5 kW and about 716 N m.
    const { mean } = millingForce(3, { diameter: 50, teeth: 20, width: 100, depth: 3, feed: 0.25 });
    expect((mean * 25) / 1000).toBeCloseTo(716, 0);
    expect(mean * ((Math.PI * 0.05 * 100) / 60)).toBeCloseTo(7500, 6);
  });

  it('opens a hole with the difference of two drillings', () => {
    expect(openingTorque(2, 10, 6, 0.1)).toBeCloseTo(drillingForces(2, 10, 0.1).torque - drillingForces(2, 6, 0.1).torque, 9);
  });
});
