/** Depths of cut of small machines in free-cutting steel, mm: common practice. Softer metals take more, by their cutting energy. */
export const passDepths = {
  facing: 0.5,
  turning: 0.75,
  boring: 0.3,
  /** Left for the finishing pass, a side. */
  finish: 0.15,
  /** Of the cutter's diameter where it cuts on its whole width, and on part of it; and the most. */
  slotting: 0.25,
  slottingMost: 2,
  sideMilling: 0.12,
  sideMillingMost: 1.5,
} as const;

/** Part of an end mill's diameter that cuts where nothing bounds it. */
export const millingWidth = 0.7;

/** Run in and out of a cut, mm together. */
export const overrun = 2;

/** Cutting energy of free-cutting steel, J/mm3, to which the depths belong. */
export const steelEnergy = 1.9;

/** Turns a minute where the plan has none. */
export const turnsUnknown = 500;
