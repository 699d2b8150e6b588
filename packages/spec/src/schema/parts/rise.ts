import type { z } from "zod";
import type { SystemRise } from "../../system/Part.js";
import { block } from "../block.js";
import { measured, text } from "../leaves/index.js";
import { isScalar, shorthand } from "../shorthand.js";

/** A climb, as a file has it: its height alone, or with a name. */
export const riseBlock = shorthand(
  block("a rise", "0.9 m", { name: text("a name", "up to the deck").optional(), height: measured("height") }),
  (value) => (isScalar(value) ? { height: value } : value),
  { type: "string", description: 'how far the path climbs, such as "0.9 m"; negative where it falls' },
);

/** A climb in SI. */
export function toRise(data: z.output<typeof riseBlock>, name: string): SystemRise {
  return { part: "rise", name, height: data.height };
}
