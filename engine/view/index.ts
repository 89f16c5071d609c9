export { cameraFrom, depthOf, isometricCamera, projectPoint, rightOf, standardCamera } from './camera.js';
export { boundsOf, type Box } from './bounds.js';
export { flatDiagonals } from './flats.js';
export type { AddedCurve, Camera, Curve3, CurveRole, View, ViewCurve } from './model.js';
export { prepare } from './prepared.js';
export { project, type ProjectOptions } from './project.js';
export { sectionFaces, type Loop, type SectionFace } from './section-faces.js';
