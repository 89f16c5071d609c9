/** Where drills run off and break: common practice. */
export const drillingLimits = {
  /** A face leaning more than this throws a drill off, degrees; a centre drill or a stub drill starts it up to `startMost`. */
  startFree: 3,
  startMost: 15,
  /** Of the rim, the share that must find metal for a drill to start at all. */
  startRim: 0.5,
  /** So unlike may the places be at which the rim leaves the metal, in diameters, before the drill grabs. */
  leaveUnlike: 0.12,
  /** From so many on it grabs in earnest. */
  grabs: 0.4,
  /** Metal below a blind hole, mm. */
  floor: 1,
} as const;
