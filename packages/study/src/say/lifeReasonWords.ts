import type { LifeReason } from "../life/LifeAnswer.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** Why nothing can be said of a life, as a clause that names what would settle it. */
export function lifeReasonWords(reason: LifeReason, units: UnitSystem): Words {
  switch (reason.code) {
    case "shut":
      return say`${reason.by} lets no fuel through, so no element fills; open it, then ask again`;
    case "no delivered fuel":
      return say`how dirty the fuel comes is not stated (a code such as 18/16/13 or solids in mg/L, under "delivered fuel")`;
    case "no duty":
      return say`how the machine is run is not stated (hours a day and days a year, under "duty")`;
    case "no service interval":
      return say`no service interval is stated to hold the life against`;
    case "no filter":
      return say`no filter stands open in the path`;
    case "no solids":
      return say`the stated cleanliness gives no mass (${reason.why}); three counts, or solids in mg/L, would do`;
    case "no growing element":
      return say`no filter is known to fill (that takes what one catches, by betas or a rating that is not nominal, and how much soil it holds, by a capacity test or its area)`;
    case "no temperature to judge":
      return say`at every temperature of the duty the fuel is below its cloud point or outside its data`;
    case "unsettled": {
      const early = fig("early end", quantity(reason.early, "running time", units));
      const late = reason.late === null ? "beyond ten years of duty" : quantity(reason.late, "running time", units);
      return say`what is only estimated puts the end anywhere from ${early} to ${fig("late end", late)}, and the interval between; a capacity test would settle it`;
    }
  }
}
