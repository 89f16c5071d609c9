import type { Material } from '../material.js';

const tables = 'EN 10277, SAE J1397, ASTM, Copper Development and Aluminum Association tables';
const speeds = "speeds: workshop-text ranges for small lathes and mills, drilling from a naval training text; energy: unit power tables";

/**
 * Materials of small locomotive work. Strengths are for small bar as bought; most are from memory of the tables named,
 * typical or minimum as said, and depend on the size of the bar: for checks, not for pressure vessels.
 */
export const materialRows: readonly Material[] = [
  {
    name: 'free-cutting mild steel',
    aliases: ['free-cutting steel', 'free-cutting steel 1213/1215', '11SMn30', 'EN1A', '230M07', '1215', '1213', '12L14', 'EN1APb', 'leaded mild steel'],
    kind: 'steel', density: 7850, yieldStrength: 375, tensileStrength: 460, modulus: 206, expansion: 11.5, poisson: 0.29,
    turning: { hss: [30, 46], carbide: [90, 180] }, drilling: [24, 34], cuttingEnergy: 1.9, tapCutting: 3700, bearingPressure: 7,
    source: `EN 10277-3 for 16-40 mm cold drawn (memory); ${speeds}; tap cutting force as St44-2 (read)`,
  },
  {
    name: 'bright mild steel',
    aliases: ['mild steel', 'EN3B', '080A15', 'C15', '1018', '1020', 'low-carbon steel', 'low-carbon steel 1010-1025', '1018 cold drawn', 'cold rolled steel', 'CRS', 'steel'],
    kind: 'steel', density: 7850, yieldStrength: 340, tensileStrength: 440, modulus: 206, expansion: 11.7, poisson: 0.29,
    turning: { hss: [24, 37], carbide: [76, 150] }, drilling: [24, 34], cuttingEnergy: 2, tapCutting: 3700, bearingPressure: 7,
    source: `EN 10277-2 and SAE J1397 cold drawn (memory); ${speeds}; tap cutting force as St44-2 and Ck35 (read)`,
  },
  {
    name: 'black mild steel',
    aliases: ['hot rolled steel', '1018 hot rolled', '1020 hot rolled', 'A36', 'S275'],
    kind: 'steel', density: 7870, yieldStrength: 210, tensileStrength: 380, modulus: 205, expansion: 11.7, poisson: 0.29,
    turning: { hss: [24, 37], carbide: [76, 150] }, drilling: [24, 34], cuttingEnergy: 2, tapCutting: 3700, bearingPressure: 7,
    source: `SAE J1397 estimated minimum (memory); ${speeds}; tap cutting force as St44-2 (read)`,
  },
  {
    name: 'medium-carbon steel',
    aliases: ['EN8', 'medium-carbon steel 1040', '080M40', 'C45', '1040', '1045', 'carbon steel'],
    kind: 'steel', density: 7850, yieldStrength: 290, tensileStrength: 520, modulus: 207, expansion: 11.4, poisson: 0.29,
    turning: { hss: [18, 30], carbide: [60, 120] }, drilling: [21, 24], cuttingEnergy: 2.2, tapCutting: 3900, bearingPressure: 7,
    source: `SAE J1397 1040 hot rolled (memory); ${speeds}; tap cutting force as Ck45 (read)`,
  },
  {
    name: 'silver steel',
    aliases: ['drill rod', 'W1', 'BS 1407', 'silver steel annealed', 'silver steel BS 1407'],
    kind: 'steel', density: 7850, yieldStrength: 400, tensileStrength: 650, modulus: 207, expansion: 11, poisson: 0.29,
    turning: { hss: [15, 20], carbide: [50, 90] }, drilling: [12, 18], cuttingEnergy: 2.8, tapCutting: 5300, bearingPressure: 10,
    source: `maker data for annealed bar, uncertain (memory); ${speeds}; tap cutting force as C105W2 (read)`,
  },
  {
    name: 'gauge plate',
    aliases: ['O1', 'ground flat stock', 'tool steel', 'O1 tool steel annealed', 'tool steel O1'],
    kind: 'steel', density: 7810, yieldStrength: 380, tensileStrength: 680, modulus: 207, expansion: 11.2, poisson: 0.29,
    turning: { hss: [12, 20], carbide: [45, 80] }, drilling: [10, 15], cuttingEnergy: 2.8, tapCutting: 5300, bearingPressure: 10,
    source: `tool-steel data sheets, annealed, uncertain (memory); ${speeds}; tap cutting force as C105W2 (read)`,
  },
  {
    name: 'stainless steel 303',
    aliases: ['303', 'stainless 303', 'stainless', 'stainless steel', '303 stainless', 'EN58M'],
    kind: 'steel', density: 8000, yieldStrength: 240, tensileStrength: 620, modulus: 193, expansion: 17.2, poisson: 0.29,
    turning: { hss: [15, 24], carbide: [76, 122] }, drilling: [9, 12], cuttingEnergy: 2.8, tapCutting: 4200, bearingPressure: 7,
    source: `ASM typical annealed bar (memory); ${speeds}; tap cutting force as X6CrNi18-10 (read)`,
  },
  {
    name: 'stainless steel 316',
    aliases: ['316', '304', 'stainless 304', 'stainless 316'],
    kind: 'steel', density: 8000, yieldStrength: 205, tensileStrength: 515, modulus: 193, expansion: 16, poisson: 0.29,
    turning: { hss: [12, 18], carbide: [60, 100] }, drilling: [9, 12], cuttingEnergy: 2.8, tapCutting: 4200, bearingPressure: 7,
    source: `ASTM A276 minimum (memory); ${speeds}; tap cutting force as X6CrNi18-10 (read)`,
  },
  {
    name: 'alloy steel',
    aliases: ['EN24', '4140', '4340', 'EN16T', '42CrMo4'],
    kind: 'steel', density: 7850, yieldStrength: 650, tensileStrength: 850, modulus: 207, expansion: 12.3, poisson: 0.29,
    turning: { hss: [12, 20], carbide: [50, 90] }, drilling: [15, 21], cuttingEnergy: 2.8, tapCutting: 5500, bearingPressure: 10,
    source: `BS 970 condition T (memory); ${speeds}; tap cutting force as 42CrMo4 (read)`,
  },
  {
    name: 'grey cast iron',
    aliases: ['cast iron', 'soft cast iron', 'grey iron class 20', 'grey iron class 25', 'grey iron', 'gray cast iron', 'iron', 'GG25', 'EN-GJL-250', 'grey iron class 30'],
    kind: 'cast iron', density: 7150, yieldStrength: 150, tensileStrength: 214, modulus: 100, expansion: 10.5, poisson: 0.26,
    turning: { hss: [18, 24], carbide: [61, 91] }, drilling: [21, 46], cuttingEnergy: 1.6, tapCutting: 2900, bearingPressure: 3.5,
    source: `ASTM A48 class 30, the yield being its 0.1 % proof (memory); ${speeds}; tap cutting force as GG-25 (read)`,
  },
  {
    name: 'gunmetal',
    aliases: ['LG2', 'C83600', 'leaded gunmetal', 'red brass', 'CC491K'],
    kind: 'copper alloy', density: 8830, yieldStrength: 100, tensileStrength: 200, modulus: 83, expansion: 18, poisson: 0.33,
    turning: { hss: [24, 37], carbide: [90, 150] }, drilling: [30, 60], cuttingEnergy: 1.8, tapCutting: 2300, bearingPressure: 10,
    source: `BS 1400 LG2 sand cast minimum (memory); ${speeds}; tap cutting force as CuZn40, cautiously (read for brass)`,
  },
  {
    name: 'phosphor bronze',
    aliases: ['PB102', 'phosphor bronze C51000', 'C51000', 'C52100'],
    kind: 'copper alloy', density: 8860, yieldStrength: 450, tensileStrength: 515, modulus: 110, expansion: 17.8, poisson: 0.34,
    turning: { hss: [24, 34], carbide: [76, 122] }, drilling: [20, 40], cuttingEnergy: 2.2, tapCutting: 2800, bearingPressure: 14,
    source: `Copper Development data, C51000 half-hard rod (memory); ${speeds}; tap cutting force estimated between brass and steel`,
  },
  {
    name: 'bearing bronze',
    // Cast phosphor bronze PB1 and a bronze without a name are no stronger than this is said to be, unlike drawn phosphor bronze.
    aliases: ['SAE 660', 'C93200', 'leaded bronze', 'LB2', 'SAE660', 'C54400', 'PB1', 'bronze'],
    kind: 'copper alloy', density: 8930, yieldStrength: 97, tensileStrength: 207, modulus: 100, expansion: 18, poisson: 0.33,
    turning: { hss: [30, 60], carbide: [120, 200] }, drilling: [30, 60], cuttingEnergy: 1.6, tapCutting: 2300, bearingPressure: 14,
    source: `ASTM B584 sand cast minimum; makers of continuous cast bar print 165 and 303 MPa (read), the lower kept; ${speeds}; tap cutting force as CuZn40 (read)`,
  },
  {
    name: 'free-cutting brass',
    aliases: ['brass', 'CZ121', 'C36000', 'CW614N', '360 brass', 'CuZn39Pb3'],
    kind: 'copper alloy', density: 8470, yieldStrength: 220, tensileStrength: 430, modulus: 96, expansion: 20.9, poisson: 0.34,
    turning: { hss: [60, 107], carbide: [152, 244] }, drilling: [61, 91], cuttingEnergy: 1.4, tapCutting: 2300, bearingPressure: 7,
    source: `EN 12164 R430, uncertain: typical and minimum yields differ 2:1 (memory); ${speeds}; tap cutting force as CuZn40 (worked back from its published torque)`,
  },
  {
    name: 'copper',
    aliases: ['C101', 'C11000', 'C106', 'copper C101'],
    kind: 'copper alloy', density: 8940, yieldStrength: 69, tensileStrength: 220, modulus: 117, expansion: 17, poisson: 0.34,
    turning: { hss: [24, 60], carbide: [90, 180] }, drilling: [20, 40], cuttingEnergy: 2, tapCutting: 2800, bearingPressure: 3,
    source: `Copper Development data, annealed (memory); ${speeds}; tap cutting force estimated`,
  },
  {
    name: 'nickel silver',
    aliases: ['german silver', 'NS106', 'C75200', 'CuNi18Zn20'],
    kind: 'copper alloy', density: 8730, yieldStrength: 420, tensileStrength: 510, modulus: 125, expansion: 16.2, poisson: 0.33,
    turning: { hss: [24, 37], carbide: [76, 122] }, drilling: [20, 35], cuttingEnergy: 2.2, tapCutting: 2800, bearingPressure: 7,
    source: `Copper Development data, half hard (memory); ${speeds}; tap cutting force estimated`,
  },
  {
    name: 'aluminium 6082',
    aliases: ['aluminium', 'aluminum', '6082', '6061', 'HE30', '6082-T6', '6061-T6', 'wrought aluminium 6061'],
    kind: 'aluminium', density: 2700, yieldStrength: 250, tensileStrength: 295, modulus: 70, expansion: 23.4, poisson: 0.33,
    turning: { hss: [91, 152], carbide: [150, 300] }, drilling: [61, 91], cuttingEnergy: 0.7, tapCutting: 1300, bearingPressure: 3,
    source: `EN 755-2 T6 minimum (memory); ${speeds}; tap cutting force as G-AlSi8Cu3 (read)`,
  },
  {
    name: 'aluminium 2011',
    aliases: ['2011', '2011-T3', 'free-cutting aluminium', 'FC1'],
    kind: 'aluminium', density: 2830, yieldStrength: 296, tensileStrength: 379, modulus: 70.3, expansion: 22.9, poisson: 0.33,
    turning: { hss: [91, 152], carbide: [150, 300] }, drilling: [61, 91], cuttingEnergy: 0.7, tapCutting: 1300, bearingPressure: 3,
    source: `${tables}: T3 typical (memory); ${speeds}; tap cutting force as G-AlSi8Cu3 (read)`,
  },
  {
    name: 'acetal',
    aliases: ['POM', 'acetal homopolymer', 'plastic'],
    kind: 'plastic', density: 1420, yieldStrength: 69, tensileStrength: 69, modulus: 3.1, expansion: 110, poisson: 0.35,
    turning: { hss: [90, 180], carbide: [150, 300] }, drilling: [30, 60], cuttingEnergy: 0.2, tapCutting: 300, bearingPressure: 7,
    source: `maker data, homopolymer, uncertain (memory); speeds, energy and tap cutting force estimated`,
  },
];
