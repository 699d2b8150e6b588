import type { GroundReason } from "../check/ground.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { say, type Words } from "./words.js";

/** Such a reason as a clause. */
export function groundWords(reason: GroundReason, units: UnitSystem): Words {
  const at = (temperature: number) => quantity(temperature, "temperature", units);
  switch (reason.code) {
    case "shut":
      return say`nothing can pass ${reason.by}`;
    case "below cloud point": {
      const anyway = reason.starvesAnyway ? "; even free of wax it would starve" : "";
      return say`the fuel is below its cloud point of ${at(reason.cloudPoint)}, where wax plugs filters whatever the viscosity${anyway}`;
    }
    case "cloud point not known":
      return say`the cloud point is not given, and fuel of this kind may carry wax below ${at(reason.limit)}`;
    case "fuel out of range":
      return reason.from > 0
        ? say`no data back this fuel's figures below ${at(reason.from)}`
        : say`no data back this fuel's figures above ${at(reason.to)}`;
  }
}
