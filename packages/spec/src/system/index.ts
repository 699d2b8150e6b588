export type { SystemDeliveredFuel, SystemSolids } from "./DeliveredFuel.js";
export type { SystemDemand } from "./Demand.js";
export type { SystemDuty } from "./Duty.js";
export type {
  FlowDirection,
  SystemAbsorber,
  SystemBeta,
  SystemCapacityTest,
  SystemFilter,
  SystemFlowPoint,
  SystemMedium,
  SystemRatingKind,
} from "./Filter.js";
export type { SystemFuel, SystemFuelMeasured, SystemGrade } from "./Fuel.js";
export type { SystemLimits } from "./Limits.js";
export type {
  SystemBank,
  SystemFitting,
  SystemFittingLoss,
  SystemLine,
  SystemOrifice,
  SystemPart,
  SystemRise,
  SystemStrainer,
  SystemValve,
} from "./Part.js";
export type { SystemPump } from "./Pump.js";
export type { SystemService } from "./Service.js";
export type { SystemSpread } from "./Spread.js";
export type { System } from "./System.js";
export type { SystemTank, SystemVent } from "./Tank.js";
