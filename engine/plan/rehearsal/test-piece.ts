import type { Part } from '../../part/part.js';
import type { OperationState } from '../states/state.js';
import type { Blank } from './blank.js';
import type { Ladder } from './ladder.js';
import type { Needed } from './needed.js';
import type { Region } from './region.js';
import type { Beside } from './side-by-side.js';

/** The sacrificial piece of a part: a part of its own, and what it has to do with the real one. */
export interface TestPiece {
  readonly part: Part;
  readonly of: Part;
  readonly rehearsed: readonly number[];
  readonly regions: readonly Region[];
  readonly blank: Blank;
  readonly leftOut: Needed['leftOut'];
  readonly trials: number;
  /** One trial of it, as if there were no others. */
  readonly single: Part;
  /** Set where the trials stand side by side on one blank. */
  readonly beside?: Beside;
  /** The ladder whose rungs the trials are. */
  readonly ladder?: Ladder;
  /** The piece with the part's own sizes throughout, where some of its trials stand on purpose off them. */
  readonly nominal?: Part;
  /** Why several trials do not stand so, for the middle of a sentence. */
  readonly whyInTurn?: string;
  /** Length of bar for all trials, mm: where they do not stand side by side each is sawn off, and the next begins on the fresh end. */
  readonly barLength: number;
  /** The real part's states, for comparing, and the facets with which they were made. */
  readonly segments: number;
  readonly states: readonly OperationState[];
}
