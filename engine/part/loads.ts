import type { Thread } from '../trade/threads.js';

/** The engine that a part is for, as far as loads follow from it. Lengths mm, pressure MPa, mass kg. */
export interface Engine {
  readonly name: string;
  readonly bore: number;
  readonly stroke: number;
  /** Between the centres of the connecting rod. */
  readonly rod: number;
  readonly pressure: number;
  readonly kilograms: number;
}

/** What loads something: steam on a piston, the weight of the engine, or the thing's own weight. */
export type LoadedBy = 'steam' | 'weight' | 'own weight';

/** A solid section: area mm2, second moments mm4 about its weak and its strong axis, half its depth in the strong direction, mm. */
export interface LoadedSection {
  readonly area: number;
  readonly weakMoment: number;
  readonly strongMoment: number;
  readonly halfDepth: number;
}

interface Base {
  /** As in "rod sideways", "pin in the rod's bush". */
  readonly what: string;
  readonly by: LoadedBy;
  /** N */
  readonly force: number;
  /** Name in the tables of materials: of the rod, pin or screw, or of the bearing. */
  readonly material: string;
}

/** What a bearing carries, MPa, where that is another figure than the usual one of its material. */
export interface BearingLimit {
  readonly pressure: number;
  readonly source: string;
}

/** Something of a part that a load bears on, as plain data. Lengths mm. */
export type LoadCheck =
  | (Base & { readonly kind: 'column'; readonly length: number; readonly section: LoadedSection; readonly ends: 'pinned' | 'fixed' })
  | (Base & { readonly kind: 'shear'; readonly diameter: number; readonly planes: 1 | 2 })
  /** A pin in a fork: `middle` is the width of what it carries, `side` that of each cheek. */
  | (Base & { readonly kind: 'pin-bending'; readonly diameter: number; readonly middle: number; readonly side: number })
  | (Base & { readonly kind: 'bearing'; readonly diameter: number; readonly length: number; readonly limit?: BearingLimit })
  | (Base & { readonly kind: 'slide'; readonly width: number; readonly length: number })
  | (Base & { readonly kind: 'screw'; readonly thread: Thread })
  | (Base & { readonly kind: 'stripping'; readonly thread: Thread; readonly engagement: number; readonly screw: string })
  /** A rod held at its ends, that bends under its own weight; its force is that weight. */
  | (Base & { readonly kind: 'own-weight'; readonly length: number; readonly section: LoadedSection });

/** Which loads a part of some values bears in an engine. */
export interface Loads<V> {
  readonly engine: Engine;
  readonly checks: (values: V, engine: Engine) => readonly LoadCheck[];
}

/** Load on the piston with the boiler's pressure behind it, N: all of it, for drop and back pressure only take away. */
export const pistonLoad = ({ bore, pressure }: Engine): number => (Math.PI / 4) * bore ** 2 * pressure;

/** The greatest push of a crosshead against its bars, N: the piston's load times the slope of the rod, tan(asin(half stroke / rod)). */
export const slideLoad = (engine: Engine): number => pistonLoad(engine) * Math.tan(Math.asin(engine.stroke / 2 / engine.rod));

/** An engine exactly a factor larger, at the same pressure: lengths by the factor, mass by its cube. */
export const scaledEngine = (engine: Engine, factor: number): Engine => ({
  ...engine,
  bore: engine.bore * factor,
  stroke: engine.stroke * factor,
  rod: engine.rod * factor,
  kilograms: engine.kilograms * factor ** 3,
});
