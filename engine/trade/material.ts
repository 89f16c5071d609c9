/** A range of cutting speeds, metres a minute. */
export type SpeedRange = readonly [low: number, high: number];

export interface Material {
  readonly name: string;
  readonly aliases: readonly string[];
  readonly kind: 'steel' | 'cast iron' | 'copper alloy' | 'aluminium' | 'plastic';
  /** kg/m3 */
  readonly density: number;
  /** Yield or proof stress, MPa (N/mm2). */
  readonly yieldStrength: number;
  /** MPa */
  readonly tensileStrength: number;
  /** Young's modulus, GPa. */
  readonly modulus: number;
  /** Thermal expansion, micrometres per metre and kelvin. */
  readonly expansion: number;
  readonly poisson: number;
  /** Turning and milling speeds by tool material; drilling with high-speed steel. */
  readonly turning: { readonly hss: SpeedRange; readonly carbide: SpeedRange };
  readonly drilling: SpeedRange;
  /** Specific cutting energy, J/mm3 (W s/mm3). */
  readonly cuttingEnergy: number;
  /** Cutting force of a tap, N/mm2, for the formula of `tapTorque` only. */
  readonly tapCutting: number;
  /** Usual limit of the mean bearing pressure against hard or ground steel with oil, MPa. */
  readonly bearingPressure: number;
  readonly source: string;
}
