/**
 * How much is enough to hold work by, mm where nothing else is said: common practice of small workshops. A chuck holds one
 * diameter or `chuckEnough`, whichever is less; a vice a third of the height, and never less than `viceLeast`.
 */
export const holding = {
  chuckEnough: 10,
  /** Share of what is enough under which work is torn out of the jaws. */
  hopeless: 0.4,
  viceShare: 1 / 3,
  viceLeast: 3,
  /** Under this no vice holds. */
  viceHopeless: 1.5,
  /** Walls thinner than this spring between vice jaws. */
  viceWall: 2,
  /** Of its outside diameter: a ring with a thinner wall goes three-lobed in a chuck. */
  ringWall: 0.1,
} as const;
