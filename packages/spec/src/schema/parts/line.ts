import type { z } from "zod";
import type { SystemLine } from "../../system/Part.js";
import { also } from "../also.js";
import { block } from "../block.js";
import { given } from "../given.js";
import { choice, measured, text } from "../leaves/index.js";
import { withJson } from "../shapes.js";
import { checkWall, roughnessOf, surfaceNames } from "./surface.js";

/** A straight line, as a file has it. */
export const lineBlock = withJson(
  also(
    block("a line", "{ length: 6 m, bore: 10 mm, surface: rubber hose }", {
      name: text("a name", "tank line").optional(),
      length: measured("length"),
      bore: measured("bore"),
      surface: choice("a surface", surfaceNames).optional(),
      roughness: measured("roughness").optional(),
    }),
    checkWall,
  ),
  { oneOf: [{ required: ["surface"] }, { required: ["roughness"] }] },
);

/** A straight line in SI. */
export function toLine(data: z.output<typeof lineBlock>, name: string): SystemLine {
  const { length, bore, surface } = data;
  return given({ part: "line", name, length, bore, roughness: roughnessOf(data), surface });
}
