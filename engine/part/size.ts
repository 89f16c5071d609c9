import type { Vector3 } from '../geometry/vector.js';
import type { Direction } from './station.js';
import type { Sized } from './tolerance.js';

/** A standard thread as a cut carries it. Lengths mm. */
export interface ThreadSize {
  readonly designation: string;
  readonly major: number;
  readonly pitch: number;
  /** Core of the internal thread, mm: the diameter that the drawing's inner line shows. */
  readonly minor: number;
  readonly class?: string;
}

/** What every size that belongs to a hole, or to a group of like holes, tells about where it is. */
interface AtHoles {
  readonly cut: string;
  /** Where each hole's axis meets its entry face. */
  readonly points: readonly Vector3[];
  /** Into the material, length one. */
  readonly direction: Vector3;
  /** Set where the holes stand equally spaced on a circle. */
  readonly pitchCircle?: PitchCircle;
  /** Set where the holes do not enter square: by how many degrees, from one direction toward another. */
  readonly lean?: { readonly angle: number; readonly from: Direction; readonly toward: Direction };
}

/** A circle on which holes stand equally spaced: its middle on the entry face, its diameter, and where the first hole is. */
export interface PitchCircle {
  readonly centre: Vector3;
  readonly diameter: Sized;
  /** Degrees from `zero`, counter-clockwise as seen against the way in. */
  readonly start: number;
  /** Direction of length one in the entry face from which `start` counts. */
  readonly zero: Vector3;
  readonly zeroName: string;
}

/** A round hole, or a group of like holes, as drilled, reamed, bored or milled. */
export interface HoleSize extends AtHoles {
  readonly kind: 'hole';
  readonly diameter: Sized;
  /** Full-diameter depth from the entry face; absent for a hole right through. */
  readonly depth?: Sized;
  /** Where a hole without a depth ends: nothing for right through, else what it runs into ("cross bore"). */
  readonly into?: string;
  /** Included angle of the point of a blind hole; 180 is a flat bottom. */
  readonly pointAngle: number;
  readonly finish: 'drilled' | 'reamed' | 'bored' | 'milled';
  /** The drill or reamer by name, where the size has one. */
  readonly tool?: string;
}

/** A thread tapped into holes that are there already. No depth: as deep as the hole goes through. */
export interface TappingSize extends AtHoles {
  readonly kind: 'tapping';
  readonly thread: ThreadSize;
  readonly depth?: Sized;
}

/** A conical mouth of holes. */
export interface CountersinkSize extends AtHoles {
  readonly kind: 'countersink';
  readonly diameter: Sized;
  readonly angle: number;
}

/** A wider, flat-bottomed mouth of holes. */
export interface CounterboreSize extends AtHoles {
  readonly kind: 'counterbore';
  readonly diameter: Sized;
  readonly depth: Sized;
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

/** A circle about an axis, on which a turned corner or edge lies: it is seen in every lengthwise view. */
export interface Ring {
  /** The circle's centre, on the axis. */
  readonly point: Vector3;
  readonly axis: Vector3;
  readonly radius: number;
}

/** A radius: a corner left by a cutter, a fillet, a rounded end. */
export interface RadiusSize {
  readonly kind: 'radius';
  readonly cut: string;
  readonly radius: Sized;
  /** Milled: the centres of the arcs that share the radius, the direction square to their plane, and from each centre the way to the middle of its arc. */
  readonly centres: readonly Vector3[];
  readonly axis?: Vector3;
  readonly toward: readonly Vector3[];
  /** Turned: the ring on which the arc's centre lies, and the way to the arc's middle as (outward, along the axis). */
  readonly ring?: Ring & { readonly towardOut: number; readonly towardAlong: number };
  /** The rounded end of a slot, half as large as the slot is wide: its width says the radius, and it is not said again. */
  readonly full?: boolean;
  /** Milled: degrees each side of `toward` over which the arc surely runs; 40 unless said. */
  readonly within?: number;
}

/** What all that is swung about a centre tells about its arc. The centre may stand off the part. */
interface AlongArc {
  readonly cut: string;
  readonly centre: Vector3;
  /** Along the cutter, out of the part, length one. */
  readonly axis: Vector3;
  /** From the centre to the middle of the arc, length one. */
  readonly middle: Vector3;
  /** The ends of the arc, on its middle line. */
  readonly ends: readonly [Vector3, Vector3];
  /** Name of the line on which centre and middle lie. */
  readonly line: string;
}

/** A slot along an arc with full-round ends. */
export interface ArcSlotSize extends AlongArc {
  readonly kind: 'arc-slot';
  /** Of the slot's middle line. */
  readonly radius: Sized;
  readonly width: Sized;
  /** What else stands on the middle line, and is placed along it by no other size: "holes". */
  readonly also?: string;
  readonly through: boolean;
}

/** The two curved sides of a band along an arc, which run into its rounded ends. */
export interface ArcSidesSize extends AlongArc {
  readonly kind: 'arc-sides';
  /** Radii of the two sides, mm; they follow from middle line and ends, and are not said on the print. */
  readonly inner: number;
  readonly outer: number;
  /** What else lies on the same centre. */
  readonly concentricWith: string;
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

/** A chamfer on a turned edge: its leg along the axis and its angle to the axis. */
export interface ChamferSize {
  readonly kind: 'chamfer';
  readonly cut: string;
  /** The middle of the chamfer, as a ring about the axis. */
  readonly ring: Ring;
  /** Along the axis, out of the material, length one. */
  readonly outward: Vector3;
  readonly internal: boolean;
  readonly leg: Sized;
  readonly angle: number;
  /** Set where the chamfer is given by the circle that it leaves on the end face, and by its angle to that face. */
  readonly face?: { readonly diameter: Sized; readonly angle: number };
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

/** A thread in a bore, as far as the groove or shoulder in which its tool runs out. */
export interface InternalThreadSize {
  readonly kind: 'internal-thread';
  readonly cut: string;
  readonly thread: ThreadSize;
  /** Ends of the full thread, on the axis; `from` is the mouth. */
  readonly from: Vector3;
  readonly to: Vector3;
  /** Diameter of the bore that it is cut in, mm. */
  readonly core: number;
  readonly method: 'tap' | 'screw-cut';
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
  | TappingSize
  | CountersinkSize
  | CounterboreSize
  | DiameterSize
  | RadiusSize
  | ArcSlotSize
  | ArcSidesSize
  | AngleSize
  | ChamferSize
  | ExternalThreadSize
  | InternalThreadSize
  | CentreHoleSize;
