import type { z } from "zod";
import type { SystemTank, SystemVent } from "../system/Tank.js";
import { also, type Report } from "./also.js";
import { block } from "./block.js";
import { given } from "./given.js";
import { choice, measured, text } from "./leaves/index.js";
import { list } from "./list.js";
import type { PartData } from "./parts/PartData.js";
import { path } from "./parts/part.js";
import { isScalar, shorthand } from "./shorthand.js";

const ventWords = ["open", "blocked"] as const;

/** A vent: open, blocked, or with a spring: the vacuum at which it lets air in. */
const vent = shorthand(
  also(
    block("a vent", "open", {
      state: choice("a vent", ventWords, ', or the vacuum at which it opens, such as "2 kPa"').optional(),
      opening: measured("opening").optional(),
    }),
    (data, report) => {
      if (Object.keys(data).length !== 1)
        report([], "missing", "nothing to read as a vent; write open, blocked, or { opening: 2 kPa }");
    },
  ),
  (value) => {
    if (!isScalar(value)) return value;
    // A word that is neither is as likely a pressure: one that begins with a figure is read as one.
    return /^[-+.\d]/.test(String(value)) ? { opening: value } : { state: value };
  },
  { type: "string", description: 'open, blocked, or the vacuum at which it opens, such as "2 kPa"' },
);

const shared = {
  "full depth": measured("depth"),
  "low depth": measured("depth"),
  vent,
  volume: measured("volume").optional(),
};

const example = "{ full depth: 1.1 m, low depth: 0.2 m, vent: open }";

const shape = block("a tank", example, { name: text("a name", "day tank").optional(), ...shared });

/** The only tank, as a file has it. */
export const tankBlock = also(shape, checkDepths);

/** One of several tanks, as a file has it: with the path from its pick-up to the joint. */
const oneOfTanks = also(
  block("a tank", `{ name: left, ${example.slice(2, -2)}, path: [line: { … }] }`, {
    name: text("a name", "left tank"),
    ...shared,
    path,
  }),
  checkDepths,
);

/** Several tanks, as a file has them. */
export const tankList = list("a list of tanks", "[{ name: left, … }, { name: right, … }]", oneOfTanks, {
  least: 2,
  most: 20,
  of: "tank",
});

type TankData = z.output<typeof shape> & { readonly path?: PartData[] };

function checkDepths(data: Partial<TankData>, report: Report): void {
  const [full, low] = [data["full depth"] ?? Number.NaN, data["low depth"] ?? Number.NaN];
  if (low > full) {
    report(["low depth"], "low over full", "more than the full depth; both are the fuel's height over the pick-up");
  }
}

/** A tank in SI; the parts of its path are made by the caller. */
export function toTank(data: TankData, name: string, parts: SystemTank["path"]): SystemTank {
  return given({
    name,
    fullDepth: data["full depth"],
    lowDepth: data["low depth"],
    vent: toVent(data.vent),
    volume: data.volume,
    path: parts,
  });
}

function toVent(data: z.output<typeof vent>): SystemVent {
  if (data.opening !== undefined)
    return data.opening > 0 ? { kind: "spring", opening: data.opening } : { kind: "open" };
  return { kind: data.state === "blocked" ? "blocked" : "open" };
}
