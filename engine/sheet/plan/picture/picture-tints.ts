import type { Tint } from './tint.js';

/** Newly cut faces, what holds the work, and what it lies on: told apart without colour or grey. */
export const tints = {
  cut: { angle: 45, pitch: 0.9 },
  held: { angle: 135, pitch: 1.8 },
  packing: { angle: 0, pitch: 1.8 },
} as const satisfies Readonly<Record<string, Tint>>;
