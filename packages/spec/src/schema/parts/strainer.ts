import type { z } from "zod";
import type { SystemStrainer } from "../../system/Part.js";
import { block } from "../block.js";
import { measured, text } from "../leaves/index.js";

/** A woven screen, as a file has it. */
export const strainerBlock = block("a strainer", "{ aperture: 425 um, wire: 280 um, area: 20 cm2 }", {
  name: text("a name", "pick-up screen").optional(),
  aperture: measured("aperture"),
  wire: measured("wire"),
  area: measured("area"),
});

/** A woven screen in SI. */
export function toStrainer(data: z.output<typeof strainerBlock>, name: string): SystemStrainer {
  return { part: "strainer", name, aperture: data.aperture, wire: data.wire, area: data.area };
}
