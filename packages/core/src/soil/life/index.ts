export { CatchBalance, type DemandFlows, type HeldFixed } from "./CatchBalance.js";
export { PLUGGED } from "./Fouling.js";
export type {
  DirtyDelivery,
  DutyLoad,
  DutyPhase,
  DutyPoint,
  Life,
  LifeEnd,
  LifeGiven,
  LifeMoment,
} from "./LifeKinds.js";
export { life } from "./life.js";
export type { SoilElement } from "./SoilElement.js";
