/** Hexagon nuts: across flats max, min; across corners max (inch) or min (metric); thickness max, min; thin nut max. */
type Nut = readonly [size: string, flatsMax: number, flatsMin: number, corners: number, thickMax: number, thickMin: number, thinMax?: number];

/** ASME B18.6.3 machine screw nuts, inches (read in two stored makers' tables; Nos. 1, 5, 6 and 1/4 memory). */
export const machineScrewNuts: readonly Nut[] = [
  ['No. 0', 0.156, 0.15, 0.18, 0.05, 0.043],
  ['No. 1', 0.156, 0.15, 0.18, 0.05, 0.043],
  ['No. 2', 0.188, 0.18, 0.217, 0.066, 0.057],
  ['No. 3', 0.188, 0.18, 0.217, 0.066, 0.057],
  ['No. 4', 0.25, 0.241, 0.289, 0.098, 0.087],
  ['No. 5', 0.312, 0.302, 0.361, 0.114, 0.102],
  ['No. 6', 0.312, 0.302, 0.361, 0.114, 0.102],
  ['No. 8', 0.344, 0.332, 0.397, 0.13, 0.117],
  ['No. 10', 0.375, 0.362, 0.433, 0.13, 0.117],
  ['No. 12', 0.438, 0.423, 0.505, 0.161, 0.148],
  ['1/4', 0.438, 0.423, 0.505, 0.193, 0.178],
  ['5/16', 0.562, 0.545, 0.65, 0.225, 0.208],
  ['3/8', 0.625, 0.607, 0.722, 0.257, 0.239],
];

/** ASME B18.2.2 hexagon nuts, and jam nuts as the thin ones, inches (read; 5/16 memory). */
export const hexagonNutsInch: readonly Nut[] = [
  ['1/4', 0.438, 0.428, 0.505, 0.226, 0.212, 0.163],
  ['5/16', 0.5, 0.489, 0.577, 0.273, 0.258, 0.195],
  ['3/8', 0.562, 0.551, 0.65, 0.337, 0.32, 0.227],
  ['7/16', 0.688, 0.675, 0.794, 0.385, 0.365, 0.26],
  ['1/2', 0.75, 0.736, 0.866, 0.448, 0.427, 0.323],
];

/** ISO 4032 style 1, and ISO 4035 as the thin ones, mm (read in three stored pages; M2, M4, M5, M12 and thin nuts memory). */
export const hexagonNutsMetric: readonly Nut[] = [
  ['M1.6', 3.2, 3.02, 3.41, 1.3, 1.05, 1],
  ['M2', 4, 3.82, 4.32, 1.6, 1.35, 1.2],
  ['M2.5', 5, 4.82, 5.45, 2, 1.75, 1.6],
  ['M3', 5.5, 5.32, 6.01, 2.4, 2.15, 1.8],
  ['M3.5', 6, 5.82, 6.58, 2.8, 2.55, 2],
  ['M4', 7, 6.78, 7.66, 3.2, 2.9, 2.2],
  ['M5', 8, 7.78, 8.79, 4.7, 4.4, 2.7],
  ['M6', 10, 9.78, 11.05, 5.2, 4.9, 3.2],
  ['M8', 13, 12.73, 14.38, 6.8, 6.44, 4],
  ['M10', 16, 15.73, 17.77, 8.4, 8.04, 5],
  ['M12', 18, 17.73, 20.03, 10.8, 10.37, 6],
];
