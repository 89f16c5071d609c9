import type { Vector3 } from '../geometry/vector.js';
import type { Form } from './form.js';
import type { Sized, Tolerance } from './tolerance.js';

/** What a face of a cut is for the drawing. */
export interface CutFace {
  /** Ids of the stations that this face lies on. */
  readonly stations: readonly string[];
  /** Surface texture asked for: arithmetic mean roughness Ra, micrometres. */
  readonly texture?: number;
}

/** A standard thread as a cut carries it. Lengths mm. */
export interface ThreadSize {
  readonly designation: string;
  readonly major: number;
  readonly pitch: number;
  /** Core of the internal thread, mm: the diameter that the drawing's inner line shows. */
  readonly minor: number;
  readonly class?: string;
}

/** A round hole, or a group of like holes, with all that belongs to it. */
export interface HoleSize {
  readonly kind: 'hole';
  readonly cut: string;
  /** Where each hole's axis meets its entry face. */
  readonly points: readonly Vector3[];
  /** Into the material, length one. */
  readonly direction: Vector3;
  readonly diameter: Sized;
  /** Full-diameter depth, absent for a hole right through. */
  readonly depth?: Sized;
  /** Included angle of the point of a blind hole; 180 is a flat bottom. */
  readonly pointAngle: number;
  readonly finish: 'drilled' | 'reamed' | 'bored' | 'milled';
  readonly thread?: ThreadSize & { readonly depth?: Sized };
  readonly counterbore?: { readonly diameter: Sized; readonly depth: Sized };
  /** A countersink at the entry; `both` when the far end of a through hole has one too. */
  readonly countersink?: { readonly diameter: Sized; readonly angle: number; readonly both?: boolean };
}

/** A turned diameter, outside or inside. The axial ends lie on the axis. */
export interface DiameterSize {
  readonly kind: 'diameter';
  readonly cut: string;
  readonly from: Vector3;
  readonly to: Vector3;
  readonly diameter: Sized;
  readonly internal: boolean;
}

/** A radius: a corner left by a cutter, a fillet, a rounded end. */
export interface RadiusSize {
  readonly kind: 'radius';
  readonly cut: string;
  /** The centres of the arcs that share the radius. */
  readonly centres: readonly Vector3[];
  /** Direction square to the plane in which the arc lies. */
  readonly axis: Vector3;
  readonly radius: Sized;
  /** Direction from a centre to the middle of its arc, one for each centre. */
  readonly toward: readonly Vector3[];
}

/** An angle between two lines that leave a corner, in the plane that they span. */
export interface AngleSize {
  readonly kind: 'angle';
  readonly cut: string;
  readonly corner: Vector3;
  /** Two directions of length one; the angle is measured from `a` to `b`. */
  readonly a: Vector3;
  readonly b: Vector3;
  readonly degrees: number;
  readonly tolerance?: number;
  /** True where the number is the included angle of a cone. */
  readonly included?: boolean;
}

/** A chamfer on an edge: leg along the axis (or from the first face) and angle. */
export interface ChamferSize {
  readonly kind: 'chamfer';
  readonly cut: string;
  /** Points midway along the chamfered edges. */
  readonly points: readonly Vector3[];
  /** Outward from the material at each point. */
  readonly outward: readonly Vector3[];
  readonly leg: Sized;
  readonly angle: number;
}

/** A thread on the outside of a turned diameter. */
export interface ExternalThreadSize {
  readonly kind: 'external-thread';
  readonly cut: string;
  readonly thread: ThreadSize;
  /** Ends of the full thread, on the axis; `from` is the end at which the die or tool starts. */
  readonly from: Vector3;
  readonly to: Vector3;
  /** Diameter of the thread's root, mm. */
  readonly root: number;
}

/** A centre hole for the tailstock. */
export interface CentreHoleSize {
  readonly kind: 'centre-hole';
  readonly cut: string;
  readonly point: Vector3;
  readonly direction: Vector3;
  readonly designation: string;
  readonly pilot: number;
  readonly outside: number;
}

/** A size that is not a distance along an axis of the part. */
export type Size =
  | HoleSize
  | DiameterSize
  | RadiusSize
  | AngleSize
  | ChamferSize
  | ExternalThreadSize
  | CentreHoleSize;

/** Text with lengths in it: a string stands as it is, a number with its tolerance is written in the print's unit. */
export type Phrase = readonly (string | PhraseSize)[];

export interface PhraseSize {
  readonly length: number;
  readonly tolerance?: Tolerance;
  readonly sign?: 'diameter' | 'radius';
}

/** One cut: what is taken away, by exact form, and every size and place that makes it. Plain data. */
export interface Cut {
  /** Unique in the part. */
  readonly id: string;
  /** What a machinist calls it, as in "cross bore". */
  readonly name: string;
  readonly forms: readonly Form[];
  readonly faces: Readonly<Record<string, CutFace>>;
  readonly sizes: readonly Size[];
  /** Stations that the cut sets, whether or not a face lies on them (hole centres). */
  readonly stations: readonly string[];
  /** What to do, for the operation table. */
  readonly instruction: Phrase;
}
