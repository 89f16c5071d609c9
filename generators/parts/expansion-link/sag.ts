/** How far a circle falls away from its tangent at a height above the point where they touch, mm: R less the root of R2 - h2. */
export const sagAt = (radius: number, height: number): number => radius - Math.sqrt(Math.max(0, radius * radius - height * height));
