/**
 * Diameters in which end mills and slot drills are sold, as their own unit writes them: common practice of small-tool
 * catalogues (memory), no one standard. Wider slots are cut in two passes.
 */
export const endMillSizes = {
  in: '1/64 1/32 3/64 1/16 5/64 3/32 7/64 1/8 5/32 3/16 7/32 1/4 5/16 3/8 7/16 1/2 9/16 5/8 11/16 3/4 7/8 1',
  mm: '0.5 0.8 1 1.2 1.5 2 2.5 3 3.5 4 4.5 5 5.5 6 7 8 9 10 11 12 14 16 18 20 22 25',
} as const;

/** Slitting saws: diameters and thicknesses sold (common practice; metric after ISO 2296, memory). */
export const sawSizes = {
  diameter: { in: '1 1-1/4 1-1/2 1-3/4 2 2-1/2 2-3/4 3 4 5 6 8 10', mm: '20 25 32 40 50 63 80 100 125 160 200 250' },
  thickness: { in: '0.010 0.012 0.016 0.020 0.025 1/32 3/64 1/16 5/64 3/32 1/8 5/32 3/16 1/4', mm: '0.2 0.25 0.3 0.4 0.5 0.6 0.8 1 1.2 1.6 2 2.5 3 4 5 6' },
} as const;
