import type { z } from "zod";
import type { SystemOrifice } from "../../system/Part.js";
import { block } from "../block.js";
import { measured, plain, text } from "../leaves/index.js";

/** A sharp restriction, as a file has it. */
export const orificeBlock = block("an orifice", "{ diameter: 2 mm, discharge coefficient: 0.61 }", {
  name: text("a name", "bleed orifice").optional(),
  diameter: measured("diameter"),
  "discharge coefficient": plain({ words: "a discharge coefficient", least: 0.01, most: 1, example: 0.61 }),
});

/** A sharp restriction in SI. */
export function toOrifice(data: z.output<typeof orificeBlock>, name: string): SystemOrifice {
  return { part: "orifice", name, diameter: data.diameter, dischargeCoefficient: data["discharge coefficient"] };
}
