import type { SystemDeliveredFuel } from "./DeliveredFuel.js";
import type { SystemDemand } from "./Demand.js";
import type { SystemDuty } from "./Duty.js";
import type { SystemFuel } from "./Fuel.js";
import type { SystemLimits } from "./Limits.js";
import type { SystemPart } from "./Part.js";
import type { SystemPump } from "./Pump.js";
import type { SystemService } from "./Service.js";
import type { SystemSpread } from "./Spread.js";
import type { SystemTank } from "./Tank.js";

/**
 * One machine's fuel system, checked and in SI: what a system file says, as plain data that JSON can hold.
 * `readSystem` makes it of a file, `build` makes core's values of it.
 */
export interface System {
  readonly format: "thirstline/1";
  readonly name: string;
  readonly fuel: SystemFuel;
  /** of the fuel, K */
  readonly temperature: number;
  /** above the sea, m; 0 when the file does not say, with a caution */
  readonly altitude: number;
  readonly demand: SystemDemand;
  /** one or more */
  readonly tanks: readonly SystemTank[];
  /** tank (or joint of several) to pump, in order; with no pump, the whole path */
  readonly suction: readonly SystemPart[];
  readonly pump: SystemPump;
  /** pump to injection pump, in order; left out when not stated */
  readonly delivery?: readonly SystemPart[];
  readonly limits: SystemLimits;
  /** ISO 4406 code the injection pump asks for */
  readonly protection?: { readonly code: string };
  readonly duty?: SystemDuty;
  readonly deliveredFuel?: SystemDeliveredFuel;
  readonly service?: SystemService;
  /** figures that the file gives with a spread, in the system's order; see `withDraw` */
  readonly spreads?: readonly SystemSpread[];
}
