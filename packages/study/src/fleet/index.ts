export { dateOf, dayOf } from "./day.js";
export type {
  FleetAnswer,
  FleetCaution,
  FleetElement,
  FleetEntry,
  FleetGroup,
  FleetLimit,
  FleetPart,
  FleetRate,
  FleetReason,
  LimitDue,
} from "./FleetAnswer.js";
export type { FleetMachine, FleetOptions, KnownChange } from "./FleetMachine.js";
export { fleet } from "./fleet.js";
export { fleetCalendar } from "./fleetCalendar.js";
export { fleetCsv } from "./fleetCsv.js";
export { logRefusals } from "./logRefusals.js";
export { barredByLog, MachinesOfFiles } from "./yardMachines.js";
