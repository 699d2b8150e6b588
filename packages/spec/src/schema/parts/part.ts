import type { z as Z } from "zod";
import { also, type Report } from "../also.js";
import { block } from "../block.js";
import { list } from "../list.js";
import { withJson } from "../shapes.js";
import { type Shorthand, shorthand } from "../shorthand.js";
import { bankFaults } from "./bank.js";
import type { PartData } from "./PartData.js";
import { type PartKind, partKinds } from "./partKinds.js";

/** Most parts in one list, and most branches in one bank; a system may hold 200 parts in all. */
const most = 100;

type Blocks = { [Kind in PartKind]: Z.ZodOptional<(typeof partKinds)[Kind]["block"]> };

const { line, fitting, filter, rise, ...others } = Object.fromEntries(
  Object.entries(partKinds).map(([kind, { block: own }]) => [kind, own.optional()]),
) as Blocks;

/** Every kind of part by its key, in the order faults name them. */
const kinds = {
  line,
  fitting,
  filter,
  rise,
  get bank(): Z.ZodOptional<Z.ZodType<PartData[][]>> {
    return bank.optional();
  },
  ...others,
};

const kindNames = Object.keys(kinds)
  .join(", ")
  .replace(/, (?=[^,]*$)/, " or ");

/** Other words for the kinds of part. */
const synonyms = {
  pipe: "line",
  hose: "line",
  tube: "line",
  elbow: "fitting",
  bend: "fitting",
  tee: "fitting",
  head: "rise",
  lift: "rise",
  parallel: "bank",
  "check valve": "valve",
  jet: "orifice",
  restrictor: "orifice",
  screen: "strainer",
  element: "filter",
  prefilter: "filter",
};

/** One part, as a file has it. */
const part: Z.ZodType<PartData> = withJson(
  also(block("a part", "line: { length: 6 m, bore: 10 mm, surface: rubber hose }", kinds, synonyms), (data, report) =>
    checkOneKind(data, report),
  ),
  { minProperties: 1, maxProperties: 1 },
).meta({ id: "part" });

function checkOneKind(data: PartData, report: Report): void {
  const stated = Object.keys(data);
  if (stated.length === 0) report([], "no part", `an empty part; write one of ${kindNames}`);
  for (const extra of stated.slice(1)) {
    const message = `a second kind of part beside "${stated[0]}"; start each part with "- " on its own line`;
    report([extra], "two parts in one", message);
  }
}

/** A path: parts one after another, as a file has it. */
export const path: Z.ZodType<PartData[]> = list("a list of parts", 'each after "- ", as in - line: { … }', part, {
  least: 1,
  most,
  of: "part",
});

const branch: Shorthand<Z.ZodType<PartData[]>> = shorthand(
  list("a branch, a part or a list of parts", "filter: { … }", part, { least: 1, most, of: "part" }),
  (given) => (Array.isArray(given) || given === undefined || given === null ? given : [given]),
  { $ref: "#/$defs/part" }, // a single part for a list of one
);

const bank: Z.ZodType<PartData[][]> = also(
  list("a bank", 'each branch after "- ", as in - filter: { … }', branch, { least: 2, most, of: "branch" }),
  (branches, report) => bankFaults(branches as PartData[][], report),
);
