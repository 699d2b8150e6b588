import type { z } from "zod";
import type { SystemLimits } from "../system/Limits.js";
import { also } from "./also.js";
import { block } from "./block.js";
import { given } from "./given.js";
import { measured, text } from "./leaves/index.js";

/** What the system must keep to, as a file has it. */
export const limitsBlock = also(
  block("limits", "{ vacuum clean: 20 kPa, vacuum at change: 40 kPa, feed pressure: 25 kPa }", {
    "vacuum clean": measured("vacuum").optional(),
    "vacuum at change": measured("vacuum").optional(),
    "feed pressure": measured("pressure").optional(),
    source: text("a source", "operator's manual").optional(),
  }),
  (data, report) => {
    if ((data["vacuum clean"] ?? Number.NaN) > (data["vacuum at change"] ?? Number.NaN)) {
      const message = "more than the vacuum at change; clean elements pull less vacuum than ones due for change";
      report(["vacuum clean"], "clean over change", message);
    }
  },
);

/** What the system must keep to, in SI. */
export function toLimits(data: z.output<typeof limitsBlock>): SystemLimits {
  return given({
    vacuumClean: data["vacuum clean"],
    vacuumAtChange: data["vacuum at change"],
    feedPressure: data["feed pressure"],
    source: data.source,
  });
}
