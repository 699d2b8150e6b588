import { expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import type { LifeReason } from "../life/LifeAnswer.js";
import { lifeReasonWords } from "./lifeReasonWords.js";

const HOUR = 3600;
const estimated = (late: string) =>
  `what is only estimated puts the end anywhere from {early end|90 h} to {late end|${late}}, and the interval between; a capacity test would settle it`;
const cases: readonly (readonly [LifeReason, string])[] = [
  [{ code: "shut", by: "tank cock" }, "tank cock lets no fuel through, so no element fills; open it, then ask again"],
  [
    { code: "no delivered fuel" },
    'how dirty the fuel comes is not stated (a code such as 18/16/13 or solids in mg/L, under "delivered fuel")',
  ],
  [{ code: "no duty" }, 'how the machine is run is not stated (hours a day and days a year, under "duty")'],
  [{ code: "no service interval" }, "no service interval is stated to hold the life against"],
  [{ code: "no filter" }, "no filter stands open in the path"],
  [
    { code: "no solids", why: "one count only" },
    "the stated cleanliness gives no mass (one count only); three counts, or solids in mg/L, would do",
  ],
  [
    { code: "no growing element" },
    "no filter is known to fill (that takes what one catches, by betas or a rating that is not nominal, and how much soil it holds, by a capacity test or its area)",
  ],
  [
    { code: "no temperature to judge" },
    "at every temperature of the duty the fuel is below its cloud point or outside its data",
  ],
  [{ code: "unsettled", early: 90 * HOUR, late: 700 * HOUR }, estimated("700 h")],
  [{ code: "unsettled", early: 90 * HOUR, late: null }, estimated("beyond ten years of duty")],
];
test.each(cases)("lifeReasonWords(%j, 'metric') names what would settle it", (reason, words) => {
  expect(marked(lifeReasonWords(reason, "metric"))).toBe(words);
});
