import { findMaterial, materials, type Material } from '../materials.js';
import type { Table, TableRow } from './table.js';

const materialRow = (material: Material): TableRow => ({
  name: material.name,
  aliases: material.aliases,
  kind: material.kind,
  densityKgPerM3: material.density,
  yieldMPa: material.yieldStrength,
  tensileMPa: material.tensileStrength,
  modulusGPa: material.modulus,
  expansionMicrometresPerMetreKelvin: material.expansion,
  poisson: material.poisson,
  turningHssMetresPerMinute: material.turning.hss,
  turningCarbideMetresPerMinute: material.turning.carbide,
  drillingHssMetresPerMinute: material.drilling,
  cuttingEnergyJoulesPerMm3: material.cuttingEnergy,
  bearingPressureMPa: material.bearingPressure,
  source: material.source,
});

const rows = materials.map(materialRow);

export const materialTable: Table = {
  name: 'materials',
  summary: 'materials by name or trade name (silver steel, EN1A, CZ121) or kind (steel, copper alloy, aluminium)',
  rows,
  find(filter) {
    const word = filter?.trim().toLowerCase() ?? '';
    if (word === '') return { kind: 'rows', rows };
    const ofKind = rows.filter((row) => row['kind'] === word && row.name !== word);
    return ofKind.length > 0 && !rows.some((row) => (row['aliases'] as readonly string[]).includes(word)) ? { kind: 'rows', rows: ofKind } : { kind: 'row', row: materialRow(findMaterial(filter ?? '')) };
  },
};
