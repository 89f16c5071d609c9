import type { RiskFinder } from '../chance.js';
import { angledSetUp } from './angled-set-up.js';
import { besideWall } from './beside-wall.js';
import { blindDepth } from './blind-depth.js';
import { breakThrough } from './break-through.js';
import { closeSize } from './close-size.js';
import { conicalSeat } from './conical-seat.js';
import { handedPosition } from './handed-position.js';
import { hardening } from './hardening.js';
import { longOverhang } from './long-overhang.js';
import { narrowSlot } from './narrow-slot.js';
import { parting } from './parting.js';
import { reamedFit } from './reamed-fit.js';
import { smallDrill } from './small-drill.js';
import { smallTap } from './small-tap.js';
import { swungCut } from './swung-cut.js';
import { thinWall } from './thin-wall.js';
import { threadToShoulder } from './thread-to-shoulder.js';
import { uncertainDatum } from './uncertain-datum.js';

/** What can spoil an operation, one finder a kind. */
export const riskFinders: readonly RiskFinder[] = [
  smallTap, smallDrill, besideWall, angledSetUp, uncertainDatum, blindDepth, breakThrough, handedPosition,
  thinWall, parting, hardening, narrowSlot, reamedFit, closeSize, conicalSeat, longOverhang, threadToShoulder, swungCut,
];
