export type Triple = readonly [number, number, number];
export type Box = readonly [number, number, number, number];

/** One thing said on the print. Lengths mm, angles degrees; `box` is its text on paper: left, bottom, right, top. */
export interface RecordedItem {
  readonly id: string;
  readonly kind: string;
  readonly feature: string;
  readonly axis: string | null;
  readonly nominal: number | null;
  readonly lower: number | null;
  readonly upper: number | null;
  readonly count: number;
  readonly reference: boolean;
  readonly measure: 'length' | 'angle' | 'note';
  readonly text: readonly string[];
  readonly view: string;
  readonly sheet: number;
  readonly box: Box;
}

export interface RecordedView {
  readonly id: string;
  readonly sheet: number;
  readonly scale: number;
  readonly scaleName: string;
  /** Part directions to the right, up and to the eye. */
  readonly right: string;
  readonly up: string;
  readonly eye: string;
  /** Paper position of the part's origin. */
  readonly origin: readonly [number, number];
  readonly box: Box;
  readonly section: { readonly axis: string; readonly value: number } | null;
}

/** The machine's zero and its X, Y and Z, in coordinates of the part: a setting (x, y, z) is origin + x X + y Y + z Z. */
export interface RecordedFrame {
  readonly origin: Triple;
  readonly x: Triple;
  readonly y: Triple;
  readonly z: Triple;
}

/** A cutter of an operation and how it runs. `diameter` is that of the work on a lathe, mm. */
export interface RecordedCutter {
  readonly name: string;
  readonly work: string;
  readonly diameter: number | null;
  readonly speed: number | null;
  readonly feed: string;
  readonly remark: string | null;
}

/** One thing to set: the machine's coordinates from the set-up's zero, mm, and what is printed of it. */
export interface RecordedSetting {
  readonly what: string;
  readonly x: number | null;
  readonly y: number | null;
  readonly z: number | null;
  readonly diameter: number | null;
  readonly text: string;
}

/** What the record of a test piece says of its likeness to the part. Volumes mm3, times hours. */
export interface RecordedRehearsal {
  readonly of: string;
  readonly operations: readonly number[];
  readonly trials: number;
  readonly barLength: number;
  /** How trials stand side by side, mm; null where each is made by itself. */
  readonly beside: { readonly axis: string; readonly pitch: number } | null;
  /** Operation whose sizes the trials step through; null for none. */
  readonly ladder: number | null;
  readonly likeness: readonly {
    readonly operation: number;
    readonly trial: number;
    readonly region: number;
    readonly before: { readonly missing: number; readonly extra: number };
    readonly after: { readonly missing: number; readonly extra: number };
    readonly margin: number;
    readonly alike: boolean;
    /** Sides on which the piece ends and the part goes on: clear of the cut by `distance`, the part by `follows` more, mm. */
    readonly ends: readonly { readonly axis: string; readonly end: string; readonly distance: number; readonly follows: number }[];
  }[];
  readonly stakes: readonly { readonly operation: number; readonly chance: number; readonly hours: number; readonly atStake: number; readonly rehearsalCost: number; readonly worthRehearsing: boolean; readonly risks: readonly { readonly kind: string; readonly chance: number; readonly source: string }[] }[];
  readonly measures: readonly { readonly operation: number; readonly what: string; readonly nominal: number; readonly lower: number; readonly upper: number; readonly measure: 'length' | 'angle'; readonly with: string }[];
  readonly leftOut: readonly { readonly operation: number; readonly cut: string; readonly gap: number }[];
}

/** What a print says, for programs and checks. Paper coordinates: origin at the sheet's lower left, x right, y up, mm. */
export interface PrintRecord {
  readonly format: 'trialpiece print record';
  readonly version: 1;
  readonly part: string;
  readonly title: string;
  readonly hand: 'right' | 'left' | 'none';
  readonly handMakers: readonly { readonly cut: string; readonly volume: number }[];
  readonly units: 'in' | 'mm';
  readonly projection: 'third' | 'first';
  readonly paper: { readonly name: string; readonly orientation: string; readonly size: readonly [number, number] };
  readonly scale: string;
  readonly sheets: readonly { readonly number: number; readonly title: string }[];
  readonly views: readonly RecordedView[];
  readonly dimensions: readonly RecordedItem[];
  readonly setUps: readonly { readonly id: string; readonly machine: string; readonly holding: string; readonly zero: readonly string[]; readonly frame: RecordedFrame }[];
  readonly operations: readonly {
    readonly number: number;
    readonly title: string;
    readonly setUp: string;
    readonly cutter: string;
    readonly cuts: readonly string[];
    readonly text: string;
    readonly sheet: number;
    /** Turns a minute and feed of the first cutter; null where it is turned by hand or not known. */
    readonly speed: number | null;
    readonly feed: string | null;
    readonly cutters: readonly RecordedCutter[];
    readonly settings: readonly RecordedSetting[];
    readonly lacks: readonly { readonly toGet: string; readonly instead: string }[];
  }[];
  readonly notes: readonly { readonly heading: string; readonly paragraphs: readonly string[] }[];
  /** Of a test piece only. */
  readonly rehearsal?: RecordedRehearsal | undefined;
  readonly checks: readonly { readonly name: string; readonly passed: boolean; readonly figures: Readonly<Record<string, number | string | boolean>> }[];
}
