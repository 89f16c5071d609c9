const perDegree = Math.PI / 180;

export const sine = (degrees: number): number => Math.sin(degrees * perDegree);
export const cosine = (degrees: number): number => Math.cos(degrees * perDegree);
export const tangent = (degrees: number): number => Math.tan(degrees * perDegree);
export const arcsine = (value: number): number => Math.asin(value) / perDegree;
export const arctangent = (value: number): number => Math.atan(value) / perDegree;
