import { type TestDust, testDusts } from "@thirstline/core";
import type { z } from "zod";
import type { SystemSolids } from "../system/DeliveredFuel.js";
import { also, type Report } from "./also.js";
import { block } from "./block.js";
import { cleanlinessCode } from "./cleanliness.js";
import { given } from "./given.js";
import { choice, measured, plain } from "./leaves/index.js";

const countOf = (size: string) =>
  plain({ words: `particles of ${size} and up per mL`, least: 0.001, most: 1e7, example: 400 }).optional();

const sizes = ["4 um", "6 um", "14 um"] as const;

const countsBlock = also(
  block(
    "counts",
    "{ 4 um: 1500, 6 um: 400, 14 um: 60 }",
    { "4 um": countOf("4 um"), "6 um": countOf("6 um"), "14 um": countOf("14 um") },
    Object.fromEntries(sizes.flatMap((size) => [`${size}(c)`, size.replace("um", "µm")].map((word) => [word, size]))),
  ),
  (data, report) => {
    const counted = sizes.filter((size) => size in data);
    if (counted.length < 2) {
      const message =
        "one size alone does not tell how counts fall with size; write two of 4 um, 6 um and 14 um, or all";
      report([], "too few sizes", message);
    }
    counted.forEach((size, at) => {
      const smaller = counted[at - 1];
      if (smaller === undefined || !((data[size] ?? Number.NaN) > (data[smaller] ?? Number.NaN))) return;
      const message = `more than at ${smaller}, whose count includes these; check both counts`;
      report([size], "counts rise", message);
    });
  },
);

/** What may be said of how dirty fuel is, as a file has it. */
export const solidsKeys = {
  code: cleanlinessCode().optional(),
  solids: measured("concentration").optional(),
  dust: choice("a test dust", Object.keys(testDusts) as TestDust[]).optional(),
  counts: countsBlock.optional(),
};

type SolidsData = { readonly [Key in keyof typeof solidsKeys]?: z.output<(typeof solidsKeys)[Key]> };

const ways = { code: "the code says", solids: "the solids say", counts: "the counts say" } as const;

/** Faults fuel whose dirt is stated in two ways, and a dust without its mass. */
export function checkSolids(data: SolidsData, report: Report): void {
  const stated = (["code", "solids", "counts"] as const).filter((way) => way in data);
  const [first] = stated;
  for (const extra of stated.slice(1)) {
    const message = `${ways[first ?? "code"]} how dirty the fuel is already; leave one of the two out`;
    report([extra], "stated twice", message);
  }
  if ("dust" in data && !("solids" in data)) {
    report(
      ["dust"],
      "not used",
      "a dust gives sizes to solids, and there are none here; write solids, or leave it out",
    );
  }
}

/** How dirty fuel is, in SI. */
export function toSolids({ code, solids, dust, counts }: SolidsData): SystemSolids {
  return given({
    code,
    solids,
    dust,
    counts: counts && given({ at4: counts["4 um"], at6: counts["6 um"], at14: counts["14 um"] }),
  });
}
