import type { SystemPart } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import { demoSystem } from "../../../../../tests/support/fleets.js";
import type { Remedy } from "../../choose/RemedyAnswer.js";
import { remedyParts } from "./remedyParts.js";

const lorry = demoSystem("lorry");
const soiled = {
  ...lorry,
  suction: lorry.suction.map(
    (part): SystemPart => (part.name === "prefilter P15" ? ({ ...part, restriction: 2.5 } as SystemPart) : part),
  ),
};

const practice = "source common practice, no source";
const hoses = "bores of hose as sold: FAA AC 43.13-1B (1998), table 9-3, MIL-H-8788 hose";
const wider = {
  kind: "wider bore",
  side: "suction",
  from: 0.0127,
  to: 0.0159,
  parts: ["pump hose", "elbows"],
} as const;

test.each<[remedy: Remedy, lines: Readonly<Record<string, string>>]>([
  [
    { ...wider, listed: true },
    {
      from: "bore (bore, m) | file suction[2].line.bore | 0.0127",
      to: `bore tried (bore, m) | source the next of the ${hoses} | 0.0159`,
    },
  ],
  [
    { ...wider, listed: false },
    {
      from: "bore (bore, m) | file suction[2].line.bore | 0.0127",
      to: "bore tried (bore, m) | wider-bore: x how much wider; D bore",
    },
  ],
  [
    { kind: "shorter run", part: "left hose", from: 2, to: 1.5 },
    {
      from: "length (length, m) | file tanks[0].path[0].line.length | 2",
      to: "length tried (length, m) | shorter-run: x share of it that stays; L length",
    },
  ],
  [
    { kind: "fewer fittings", part: "elbows", from: 2, to: 1 },
    {
      from: "count (plain, 1) | file suction[3].fitting.count | 2",
      to: "fittings left (plain, 1) | words half of them, rounded down; of one, none: count | 1",
    },
  ],
  [{ kind: "warmer fuel", by: 10 }, { by: `change of temperature tried (SI, K) | ${practice} | 10` }],
  [{ kind: "cooler fuel", by: 10 }, { by: `change of temperature tried (SI, K) | ${practice} | 10` }],
  [{ kind: "lower pump", by: 0.3 }, { by: `change of height tried (length, m) | ${practice} | 0.3` }],
  [{ kind: "higher tank", by: 0.3 }, { by: `change of height tried (length, m) | ${practice} | 0.3` }],
  [
    { kind: "clean element", part: "prefilter P15", restriction: 2.5 },
    { restriction: "restriction (plain, 1) | file suction[1].filter.restriction | 2.5" },
  ],
  [
    { kind: "fuller tank", tank: "right tank", from: 0.1, to: 0.275 },
    {
      from: "fuel over the pick-up when low (length, m) | file tanks[1].low depth | 0.1",
      to: "depth tried (length, m) | fuller-tank: h depth of the full tank",
    },
  ],
  [{ kind: "open vent", tank: "left tank" }, {}],
  [{ kind: "open branch", part: "prefilter P15" }, {}],
  [{ kind: "one more branch", parts: ["prefilter P15"] }, {}],
  [{ kind: "larger element", parts: ["prefilter P15"] }, {}],
])("remedyParts(system, %j) tells each figure of the change, and where it comes from", (remedy, lines) => {
  const parts = remedyParts(soiled, remedy);
  expect(Object.fromEntries(parts.map(({ key, step }) => [key, stepLines([step()])[0]]))).toEqual(lines);
});

const depthTried = (tank: string, to: number) => {
  const parts = remedyParts(lorry, { kind: "fuller tank", tank, from: 0.1, to });
  return parts.find(({ key }) => key === "to")?.step();
};

test("remedyParts(system, remedy) puts in the part's own figure, and how far it is changed", () => {
  const tried = remedyParts(lorry, { ...wider, listed: false })[1]?.step();
  expect(stepLines(tried ? [tried] : []).slice(1)).toEqual([
    `how much wider (plain, 1) | ${practice} | 1.25`,
    "bore (bore, m) | file suction[2].line.bore | 0.0127",
  ]);
  // The bore, length and depth that the answer has, whatever they round to.
  expect(tried?.value).toBe(0.0159);
  const shorter = remedyParts(lorry, { kind: "shorter run", part: "left hose", from: 2, to: 1.50001 })[1]?.step();
  expect(shorter?.value).toBe(1.50001);
  expect(stepLines(shorter ? [shorter] : [])[1]).toBe(`share of it that stays (plain, 1) | ${practice} | 0.75`);
  const fuller = depthTried("right tank", 0.27501);
  expect(fuller?.value).toBe(0.27501);
  expect(stepLines(fuller ? [fuller] : [])[1]).toBe(
    "depth of the full tank (length, m) | file tanks[1].full depth | 0.55",
  );
});

test("remedyParts(system, remedy) names a part that has no place by its name", () => {
  const from = (parts: readonly string[]) => remedyParts(lorry, { ...wider, listed: true, parts })[0]?.step().origin;
  expect(from(["elsewhere"])).toEqual({ by: "file", path: "elsewhere.bore" });
  expect(from([])).toEqual({ by: "file", path: ".bore" });
});
