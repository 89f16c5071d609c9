/** What stands for a tolerance where the print gives none, mm each way: common practice (.005 in). */
export const generalTolerance = 0.13;
/** Out of true that turned work may have after it was taken out of the chuck, mm: common practice. */
export const generalRunOut = 0.05;
/** A wall or floor from which on it is no risk, mm: drilled depth leaves 1 to 1.5 below the point (common practice). */
export const thinFrom = 1.5;
/** A tolerance from which on a size is no close one, mm in all. */
export const closeFrom = 0.06;
/** A tap stronger than this is felt before it breaks, N m: common practice. */
export const feltTorque = 1;
/** A tap that twists off at less than so many times what its cut takes is at risk at any size: common practice. */
export const leastTapMargin = 1.5;
/** Drills up to this are small, mm, and risky from so many diameters of depth on. */
export const smallDrill = 3;
export const shallow = 2.5;
/** Clearance beside a cutter from which on it is no risk, mm: this, or its radius where that is more. */
export const clearFrom = 3;
/** How far beside a cut neighbours are looked for, mm. */
export const besideWithin = 12;
/** How much of the doubt about a zero stays where metal is left, measured and only then taken: common practice. */
export const measuredFirst = 0.35;
/** Overhang over diameter that is free of chatter, alone and with a tailstock centre: common practice. */
export const freeOverhang = 3;
export const centredOverhang = 7;
/** How much less surely a zero is found on work that is packed at an angle, mm: common practice. */
export const angledPickUp = 0.03;
