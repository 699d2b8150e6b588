import type { z } from "zod";
import type { SystemValve } from "../../system/Part.js";
import { also } from "../also.js";
import { block } from "../block.js";
import { flag, measured, text } from "../leaves/index.js";

/** A valve, as a file has it. */
export const valveBlock = also(
  block("a valve", "{ kv: 1.2 m3/h, opening: 2 kPa }", {
    name: text("a name", "foot valve").optional(),
    kv: measured("kv"),
    opening: measured("opening").optional(),
    "one-way": flag("whether it shuts against backward flow; true when left out").optional(),
  }),
  (data, report) => {
    if (data["one-way"] === false && (data.opening ?? 0) > 0) {
      report(
        ["opening"],
        "not used",
        "a valve that lets fuel both ways has no opening pressure; leave one of the two out",
      );
    }
  },
);

/** A valve in SI. */
export function toValve(data: z.output<typeof valveBlock>, name: string): SystemValve {
  return { part: "valve", name, kv: data.kv, opening: data.opening ?? 0, oneWay: data["one-way"] ?? true };
}
