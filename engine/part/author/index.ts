/** What the author of a part's module needs: the vocabulary in which parts are described. */
export { definePart, type PartGenerator } from '../generator.js';
export type { Cut, Phrase, Size } from '../cut.js';
export type { Parameter, Parameters, Values } from '../parameters.js';
export type { Operation, Part, SetUp, Stock } from '../part.js';
export type { Relation } from '../relation.js';
export type { Axis, Direction, Station } from '../station.js';
export type { Tolerance } from '../tolerance.js';
export { cutsIn } from './cuts.js';
export { bevelNormal } from './cuts/bevel.js';
export type { HoleCut, HolePlaces } from './cuts/hole.js';
export type { CentreDrill } from './cuts/turned-details.js';
export type { FinishAsked } from './cuts/finish-depth.js';
export { hexagonStock, overCorners } from './hexagon-stock.js';
export { sized, stationBook } from './stations.js';
export { rectangularStock, roundStock } from './stock.js';
export { threadSize } from './threads.js';
export { deviations, fit, plusMinus } from './tolerances.js';
