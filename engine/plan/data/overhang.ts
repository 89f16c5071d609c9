/** Overhang over diameter in turning: free, and with a tailstock centre; beyond twice the first work is bent. Common practice. */
export const overhangLimits = { free: 3, hopeless: 6, centred: 7 } as const;
