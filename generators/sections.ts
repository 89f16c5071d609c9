import type { LoadedSection } from '../engine/part/loads.js';

/**
 * A rectangular shank with flutes of one width in one or both of its sides: thin across, high along the load. Second moments
 * by subtraction of rectangles; one flute moves the middle of the thickness, by the parallel-axis theorem.
 */
export function flutedSection(thickness: number, height: number, flute: { readonly width: number; readonly depth: number; readonly sides: 1 | 2 }): LoadedSection {
  const { width, depth, sides } = flute;
  const area = thickness * height - sides * width * depth;
  const off = (thickness - depth) / 2;
  // From the middle of the whole thickness to that of what is left.
  const middle = sides === 2 ? 0 : (-width * depth * off) / area;
  const weakMoment = (height * thickness ** 3) / 12 - sides * ((width * depth ** 3) / 12 + width * depth * off ** 2) - area * middle ** 2;
  const strongMoment = (thickness * height ** 3 - sides * depth * width ** 3) / 12;
  return { area, weakMoment, strongMoment, halfDepth: height / 2 };
}
