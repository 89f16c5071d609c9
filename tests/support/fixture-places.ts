import type { Vector3 } from '../../engine/geometry/vector.js';

export const distance = (a: Vector3, b: Vector3): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
