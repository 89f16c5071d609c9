import type { Vector3 } from '../geometry/vector.js';
import type { Cut, Phrase } from './cut.js';
import type { Form } from './form.js';
import type { Axis, Direction, Station } from './station.js';

/** The bar, block or plate that a part is cut from. */
export interface Stock {
  /** As ordered: "rectangular bar", "round bar". */
  readonly shape: 'round' | 'rectangular' | 'hexagon';
  /** Section: a diameter; width and thickness; across flats. Mm. */
  readonly section: readonly number[];
  /** Length to cut, mm. */
  readonly length: number;
  readonly forms: readonly Form[];
  /** Faces of the forms, by name, with the stations they lie on. */
  readonly faces: Readonly<Record<string, { readonly stations: readonly string[] }>>;
}

export type Machine = 'lathe' | 'mill' | 'drill' | 'bench';

/** What takes hold of the work, so that it can be checked that there is something to hold. */
export interface Grip {
  readonly kind: 'three-jaw chuck' | 'four-jaw chuck' | 'collet' | 'between centres' | 'vice' | 'clamps' | 'fixture';
  /**
   * Ids of two stations on one axis. Vice: the faces that the jaws press on. Chuck and collet: between which of them, along
   * the axis of the spindle, the jaws hold. Clamps and fixture: the face that rests and the one that is clamped.
   */
  readonly between: readonly [string, string];
}

/** One clamping: how the part is held, which way up, from where it is measured. */
export interface SetUp {
  /** A, B, C ... unique in the part. */
  readonly id: string;
  readonly machine: Machine;
  /** What holds it: "three-jaw chuck", "vice on parallels". */
  readonly holding: string;
  readonly grip?: Grip;
  /**
   * On the lathe: the direction that points to the tailstock. On mill, drill and bench: the direction that points up.
   */
  readonly up: Direction | Vector3;
  /** On mill and drill: the part direction along the table to the right. On the lathe: the one that points up. */
  readonly right: Direction | Vector3;
  /** Ids of the stations that are zero, one an axis that is set. */
  readonly zero: readonly string[];
  readonly note?: Phrase;
}

/** A cutter as an operation names it. Lengths mm. */
export interface Cutter {
  readonly name: string;
  readonly diameter?: number;
  /** Thickness of a saw. */
  readonly width?: number;
}

/** One numbered line of work: in one set-up, with one cutter. */
export interface Operation {
  readonly number: number;
  readonly title: string;
  readonly setUp: string;
  readonly cutter: Cutter;
  readonly cuts: readonly Cut[];
  /** What to leave for a later cut. */
  readonly leave?: Phrase;
  readonly check?: Phrase;
  /** How long it takes, minutes without its set-up, where that is known; estimated if not given. */
  readonly minutes?: number;
  readonly caution?: readonly string[];
}

/** Material and what is done to it after cutting. */
export interface Material {
  readonly name: string;
  /** Its name in the trade's tables, where `name` says it otherwise; speeds follow from it. */
  readonly trade?: string;
  readonly treatment?: Phrase;
}

/**
 * A part as its parameters make it: stock and what is cut from it. Coordinates are the part's own, mm. Plain data;
 * nothing about drawing. Everything printed is derived from this.
 */
export interface Part {
  readonly name: string;
  /** Set for what is made from another part (its test piece, the same for another gauge): that part's name, and what tells this one from it on paper: "TP". */
  readonly kin?: { readonly of: string; readonly mark: string };
  readonly title: string;
  readonly engine: string;
  readonly units: 'in' | 'mm';
  readonly quantity: number;
  readonly material: Material;
  readonly stock: Stock;
  readonly stations: readonly Station[];
  readonly setUps: readonly SetUp[];
  readonly operations: readonly Operation[];
  readonly notes: readonly Phrase[];
  /** Caution ids of templates/cautions that apply to the whole part. */
  readonly cautions: readonly string[];
  /** `turned` parts lie along an axis on the print; the direction given points to the right. */
  readonly attitude: { readonly kind: 'turned' | 'milled'; readonly front: Direction; readonly up: Direction };
  /** Axis along which the opposite hand is reversed. */
  readonly handAxis: Axis;
  readonly hand: 'right' | 'left';
  /** General texture, Ra in micrometres, where no face says otherwise. */
  readonly texture: number;
}
