/**
 * End mills that small workshops have, diameters as their own unit writes them: common practice, no standard. The largest
 * is what a small mill drives in steel.
 */
export const endMills = {
  in: ['1/16', '3/32', '1/8', '5/32', '3/16', '1/4', '5/16', '3/8', '7/16', '1/2'],
  mm: ['1', '1.5', '2', '2.5', '3', '4', '5', '6', '8', '10', '12'],
} as const;
