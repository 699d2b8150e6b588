import type { z } from "zod";
import type { SystemFitting } from "../../system/Part.js";
import { also, type Report } from "../also.js";
import { block } from "../block.js";
import { given } from "../given.js";
import { choice, measured, plain, text } from "../leaves/index.js";
import { withJson } from "../shapes.js";
import { checkWall, roughnessOf, surfaceNames } from "./surface.js";

/** Kinds of fitting, each with its row in the two-K table of the core. */
export const fittingKinds = {
  "elbow 90": "elbow 90 screwed",
  "elbow 90 screwed": "elbow 90 screwed",
  "elbow 90 flanged": "elbow 90 flanged",
  "tee run": "tee run screwed",
  "tee branch": "tee as elbow screwed",
  "ball valve": "ball or gate full bore",
  "gate valve": "ball or gate full bore",
  "globe valve": "globe",
  "swing check": "swing check",
  entrance: "entrance",
  exit: "exit",
} as const;

/** Name of a kind of fitting. */
export type FittingKind = keyof typeof fittingKinds;

const kindNames = Object.keys(fittingKinds) as FittingKind[];

const shape = block("a fitting", "{ kind: elbow 90, bore: 10 mm, count: 3 }", {
  name: text("a name", "elbow at the bulkhead").optional(),
  kind: choice("a kind of fitting", kindNames).optional(),
  k: plain({ words: "a loss coefficient K", least: 0, most: 10000, example: 1.5 }).optional(),
  "equivalent length": plain({
    words: "an equivalent length in bores",
    least: 0.1,
    most: 10000,
    example: 30,
  }).optional(),
  bore: measured("bore"),
  count: plain({ words: "a count", least: 1, most: 100, example: 3, whole: true }).optional(),
  surface: choice("a surface", surfaceNames).optional(),
  roughness: measured("roughness").optional(),
});

/** A fitting, as a file has it. */
export const fittingBlock = withJson(also(shape, check), {
  oneOf: (["kind", "k", "equivalent length"] as const).map((loss) => ({ required: [loss] })),
});

type FittingData = z.output<typeof shape>;

function check(data: Partial<FittingData>, report: Report): void {
  const stated = (["kind", "k", "equivalent length"] as const).filter((key) => key in data);
  if (stated.length === 0) {
    report(["kind"], "missing", `missing; write the kind (one of ${kindNames.join(", ")}), k, or equivalent length`);
  }
  for (const extra of stated.slice(1)) {
    const message = `the loss is stated by "${stated[0]}" already; leave one of the two out`;
    report([extra], "stated twice", message);
  }
  if ("equivalent length" in data) {
    checkWall(data, report);
    return;
  }
  for (const key of ["surface", "roughness"] as const) {
    if (key in data) report([key], "not used", `a fitting has a ${key} only with an equivalent length; leave it out`);
  }
}

/** A fitting in SI. */
export function toFitting(data: FittingData, name: string): SystemFitting {
  return given({ part: "fitting", name, bore: data.bore, count: data.count ?? 1, kind: data.kind, loss: lossOf(data) });
}

function lossOf(data: FittingData): SystemFitting["loss"] {
  if (data.kind !== undefined) return { by: "two-K", row: fittingKinds[data.kind] };
  if (data.k !== undefined) return { by: "k", k: data.k };
  return { by: "equivalent length", bores: data["equivalent length"] ?? Number.NaN, roughness: roughnessOf(data) };
}
