import type { System } from "@thirstline/spec/system";
import type { Judged } from "../../fleet/fleetEntry.js";
import type { History } from "../../fleet/historyOf.js";
import { yearOf } from "../life/yearSteps.js";
import { fromFile } from "../worked.js";
import { MeterTrack } from "./MeterTrack.js";
import { dutyRate, logRates } from "./rateSteps.js";

/** Both meters of a machine, each followed at its own rate of use. */
export function tracksOf({ hours, distance }: Judged, history: History, system: System, on: number) {
  const way = () =>
    fromFile("duty.distance", {
      name: "distance in a year",
      value: system.duty?.distance ?? 0,
      unit: "m",
      kind: "distance",
    });
  const rateOf = (of: "hours" | "distance", from: "log" | "duty") =>
    from === "log" ? logRates(of, history[of]).rate() : dutyRate(of, of === "hours" ? yearOf(system) : way());
  return {
    hours: hours && new MeterTrack("hours", hours, history.hours, { rate: rateOf("hours", hours.rate.from), on }),
    distance:
      distance &&
      new MeterTrack("distance", distance, history.distance, { rate: rateOf("distance", distance.rate.from), on }),
  };
}
