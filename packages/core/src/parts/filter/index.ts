export { type Filter, type FilterGiven, filter, type Housing } from "./filter.js";
export { AIR_VISCOSITY, type AirTest } from "./fromAirTest.js";
export type { FibreMat } from "./fromFibres.js";
export type { FlowPoint, OnePointTest, TwoPointTest } from "./fromFlowTest.js";
export type { MediumGeometry } from "./fromGeometry.js";
export type { Rating, RatingKind } from "./fromRating.js";
export type { Medium, MediumSource } from "./Medium.js";
export { type Pleats, pleatResistance } from "./pleatResistance.js";
