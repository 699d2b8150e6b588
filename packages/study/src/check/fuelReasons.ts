import type { FuelState } from "@thirstline/core";
import type { Reason } from "./CheckAnswer.js";

/** Why a fuel's figures are no promise at its temperature: wax, or no data. `starvesAnyway` is carried along. */
export function fuelReasons(fuel: FuelState, starvesAnyway: boolean): Reason[] {
  return fuel.cautions.flatMap((caution): Reason[] => {
    switch (caution.code) {
      case "below cloud point": {
        const { temperature, cloudPoint } = caution;
        return [{ code: "below cloud point", temperature, cloudPoint, starvesAnyway }];
      }
      case "cloud point not known":
        return [{ code: "cloud point not known", temperature: caution.temperature, limit: caution.limit }];
      case "below range":
        return [{ code: "fuel out of range", temperature: caution.temperature, from: caution.from, to: Infinity }];
      case "above range":
        return [{ code: "fuel out of range", temperature: caution.temperature, from: 0, to: caution.to }];
      default:
        return [];
    }
  });
}
