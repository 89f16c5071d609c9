import type { Cut } from '../cut.js';
import type { Stock } from '../part.js';
import { arcEnd, type ArcEndCut } from './cuts/arc-end.js';
import { arcSides, type ArcSidesCut } from './cuts/arc-sides.js';
import { arcSlot, type ArcSlotCut } from './cuts/arc-slot.js';
import { betweenBosses, type BetweenBossesCut } from './cuts/between-bosses.js';
import { bevel, type BevelCut } from './cuts/bevel.js';
import { bore, type BoreCut } from './cuts/bore.js';
import { clearAround, type ClearAroundCut } from './cuts/clear-around.js';
import { cornerChamfer, type CornerChamferCut } from './cuts/corner-chamfer.js';
import { face, type FaceCut } from './cuts/face.js';
import { hole, type HoleCut } from './cuts/hole.js';
import { counterbore, countersink, tap, type CounterboreCut, type CountersinkCut, type TapCut } from './cuts/hole-mouths.js';
import { internalThread, undercut, type InternalThreadCut, type UndercutCut } from './cuts/internal-details.js';
import { openSlot, type OpenSlotCut } from './cuts/open-slot.js';
import { pocket, type PocketCut } from './cuts/pocket.js';
import { roundedEnd, type RoundedEndCut } from './cuts/rounded-end.js';
import { slot, type SlotCut } from './cuts/slot.js';
import { turn, type TurnCut } from './cuts/turn.js';
import {
  centreHole,
  externalThread,
  turnedChamfer,
  type CentreHoleCut,
  type ExternalThreadCut,
  type TurnedChamferCut,
} from './cuts/turned-details.js';
import { roomOf } from './stock.js';

/** The cuts that can be made in a stock. */
export interface CutsIn {
  face(cut: FaceCut): Cut;
  pocket(cut: PocketCut): Cut;
  openSlot(cut: OpenSlotCut): Cut;
  slot(cut: SlotCut): Cut;
  clearAround(cut: ClearAroundCut): Cut;
  bevel(cut: BevelCut): Cut;
  roundedEnd(cut: RoundedEndCut): Cut;
  arcSlot(cut: ArcSlotCut): Cut;
  arcSides(cut: ArcSidesCut): Cut;
  arcEnd(cut: ArcEndCut): Cut;
  betweenBosses(cut: BetweenBossesCut): Cut;
  bore(cut: BoreCut): Cut;
  hole(cut: HoleCut): Cut;
  tap(cut: TapCut): Cut;
  countersink(cut: CountersinkCut): Cut;
  counterbore(cut: CounterboreCut): Cut;
  turn(cut: TurnCut): Cut;
  turnedChamfer(cut: TurnedChamferCut): Cut;
  centreHole(cut: CentreHoleCut): Cut;
  externalThread(cut: ExternalThreadCut): Cut;
  cornerChamfer(cut: CornerChamferCut): Cut;
  undercut(cut: UndercutCut): Cut;
  internalThread(cut: InternalThreadCut): Cut;
}

/** The cuts, bound to the box of a stock, so that open ends run clear of it. */
export function cutsIn(stock: Stock): CutsIn {
  const room = roomOf(stock);
  return {
    face,
    pocket: (cut) => pocket(room, cut),
    openSlot: (cut) => openSlot(room, cut),
    slot: (cut) => slot(room, cut),
    clearAround: (cut) => clearAround(room, cut),
    bevel: (cut) => bevel(room, cut),
    roundedEnd: (cut) => roundedEnd(room, cut),
    arcSlot: (cut) => arcSlot(room, cut),
    arcSides: (cut) => arcSides(room, cut),
    arcEnd: (cut) => arcEnd(room, cut),
    betweenBosses: (cut) => betweenBosses(room, cut),
    bore,
    hole: (cut) => hole(room, cut),
    tap,
    countersink,
    counterbore,
    turn: (cut) => turn(room, cut),
    turnedChamfer,
    centreHole,
    externalThread,
    cornerChamfer,
    undercut,
    internalThread,
  };
}
