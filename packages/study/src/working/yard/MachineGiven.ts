import type { System } from "@thirstline/spec/system";
import type { FleetEntry } from "../../fleet/FleetAnswer.js";
import type { Judged } from "../../fleet/fleetEntry.js";
import type { History } from "../../fleet/historyOf.js";
import type { Outlook } from "../../fleet/outlookOf.js";
import type { MeterTrack } from "./MeterTrack.js";

/** What the figures of one machine of a yard are worked out from. */
export interface MachineGiven {
  readonly entry: FleetEntry;
  readonly judged: Judged;
  readonly history: History;
  readonly outlook: Outlook;
  /** the file's own, with new elements */
  readonly system: System;
  /** today, by `dayOf` */
  readonly on: number;
  readonly hours: MeterTrack | null;
  readonly distance: MeterTrack | null;
  readonly lives: Float64Array | null;
}
