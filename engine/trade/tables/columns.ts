/**
 * What a column of a table holds: `length` mm; `deviation` mm with a sign; `micrometres`, a deviation too, which follows
 * the unit asked for; `plain` a number or a range of numbers in the unit that the heading names; `text`; `hidden` what
 * another column says as well, or what no line has room for.
 */
export type ColumnKind = 'length' | 'deviation' | 'micrometres' | 'plain' | 'text' | 'hidden';

export interface Column {
  readonly heading: string;
  readonly kind: ColumnKind;
}

const list = (kind: ColumnKind, headings: Readonly<Record<string, string>>): readonly (readonly [string, Column])[] =>
  Object.entries(headings).map(([key, heading]) => [key, { heading, kind }]);

/** Every column of every table, by its name in JSON; a part of a group of values is named after a point. */
export const columns: ReadonlyMap<string, Column> = new Map([
  ...list('text', {
    name: 'name', series: 'series', kind: 'kind', screw: 'screw', form: 'form', scaleToTheFoot: 'scale to the foot', use: 'use', note: 'note',
    aliases: 'also called', 'minorInternal.class': 'class',
  }),
  ...list('length', {
    major: 'major', pitch: 'pitch', pitchDiameter: 'pitch diameter', 'minorInternal.basic': 'minor (nut)', 'minorInternal.min': 'nut least', 'minorInternal.max': 'nut most',
    minorExternal: 'minor (screw)', depth: 'depth', acrossFlats: 'flats', diameter: 'diameter', pilot: 'pilot', body: 'body', pilotLength: 'pilot length',
    over: 'over', upTo: 'up to', size: 'size', width: 'width', gauge: 'gauge', tyreWidthMin: 'tyre least', flangeWidthMax: 'flange most',
    flangeDepthMax: 'flange depth most', backToBack: 'back to back', wheelGauge: 'wheel gauge', wheelCheck: 'wheel check',
    headTheoretical: 'head (sharp)', headMax: 'head most', headMin: 'head least', head: 'head', height: 'height', key: 'key', acrossFlatsMin: 'flats least',
    acrossCornersMax: 'corners most', acrossCornersMin: 'corners least', thickness: 'thickness', thicknessMin: 'thickness least', thinThickness: 'thin nut',
  }),
  ...list('deviation', { holeUpper: 'hole upper', holeLower: 'hole lower', shaftUpper: 'shaft upper', shaftLower: 'shaft lower' }),
  ...list('micrometres', { upperMicrometres: 'upper', lowerMicrometres: 'lower', toleranceMicrometres: 'tolerance' }),
  ...list('plain', {
    tpi: 'per inch', formAngle: 'angle deg', angle: 'angle deg', stressArea: 'stress area mm2', densityKgPerM3: 'kg/m3', yieldMPa: 'yield MPa', tensileMPa: 'tensile MPa',
    modulusGPa: 'modulus GPa', expansionMicrometresPerMetreKelvin: 'expansion um/m K', poisson: 'Poisson', turningHssMetresPerMinute: 'HSS m/min',
    turningCarbideMetresPerMinute: 'carbide m/min', drillingHssMetresPerMinute: 'drill HSS m/min', cuttingEnergyJoulesPerMm3: 'cutting J/mm3', bearingPressureMPa: 'bearing MPa',
    ratio: 'scale 1 to', ratioOfStandardGauge: 'of standard gauge 1 to', lowCelsius: 'from C', highCelsius: 'to C',
  }),
  ...list('hidden', { designation: '', unit: '', gaugeInches: '', source: '', classes: '' }),
]);

/** Columns that a list leaves out for want of room; a single row shows them. */
export const onlyInRow: ReadonlySet<string> = new Set(['aliases', 'kind', 'formAngle', 'depth', 'minorExternal', 'minorInternal.class', 'poisson', 'screw']);
