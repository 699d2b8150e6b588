import type { System } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import type { SwapSide } from "./SwapAnswer.js";
import type { SwapFacts } from "./SwapFacts.js";
import { protectionReasons } from "./swapProtection.js";

const heron = demoSystem("heron");
const asked = "15/13/10";
const sideOf = (code: string | null, more: Partial<SwapSide> = {}) =>
  ({ code, captureKnown: true, lifeReasons: [], ...more }) as unknown as SwapSide;
/** Facts of a swap; `after` is the side after it. */
interface Facts extends Partial<SwapFacts> {
  readonly after?: SwapSide;
}
const factsOf = ({ after: then = sideOf("15/13/10"), ...facts }: Facts) =>
  ({
    system: { ...heron, protection: { code: asked } },
    changed: heron,
    now: sideOf("15/13/10"),
    then,
    fineness: "same",
    ...facts,
  }) as SwapFacts;
const reasonsOf = (facts: Facts) => protectionReasons(factsOf(facts), null);
const { protection: _, ...unasked } = heron;

describe("protectionReasons(facts) where the manual asks for no cleanliness", () => {
  const system = unasked as System;
  test.each(["same", "finer"] as const)("takes an element %s as the one fitted for no coarser", (fineness) => {
    expect(reasonsOf({ system, fineness })).toEqual([{ weight: "note", code: "no coarser than now", fineness }]);
  });
  test.each(["coarser", "mixed", "not known"] as const)("cannot say of one that is %s", (fineness) => {
    expect(reasonsOf({ system, fineness })).toEqual([
      { weight: "cannot say", code: "protection not known", why: "what is asked", fineness },
    ]);
  });
});

describe("protectionReasons(facts) where no code can be reckoned", () => {
  test.each(["same", "finer"] as const)("takes an element %s as the one fitted for no coarser", (fineness) => {
    expect(reasonsOf({ after: sideOf(null), fineness })).toEqual([
      { weight: "note", code: "no coarser than now", fineness },
    ]);
  });
  test.each([
    [["no delivered fuel"], "the delivered fuel"],
    [["no solids"], "the delivered fuel"],
    [["no duty", "no solids"], "the delivered fuel"],
    [["no duty"], "the duty"],
    [[], "its catch"],
  ])("says of a coarser one, with %j of its life, that %s is not known", (codes, why) => {
    const lifeReasons = codes.map((code) => ({ code })) as unknown as SwapSide["lifeReasons"];
    expect(reasonsOf({ after: sideOf(null, { lifeReasons }), fineness: "coarser" })).toEqual([
      { weight: "cannot say", code: "protection not known", why, fineness: "coarser" },
    ]);
  });
});

describe("protectionReasons(facts) where a code is asked for", () => {
  test("refuses an element that leaves the fuel dirtier, and names the sizes", () => {
    expect(reasonsOf({ after: sideOf("15/14/11"), fineness: "coarser" })).toEqual([
      { weight: "no", code: "coarser than asked", found: "15/14/11", asked, sizes: ["6", "14"] },
    ]);
    expect(reasonsOf({ after: sideOf("16/13/10") })[0]).toMatchObject({ sizes: ["4"] });
  });
  test("cannot refuse one whose catch is not known, since it was counted as catching nothing", () => {
    expect(reasonsOf({ after: sideOf("18/16/13", { captureKnown: false }), fineness: "not known" })).toEqual([
      { weight: "cannot say", code: "protection not known", why: "its catch", fineness: "not known" },
    ]);
  });
  const kept = { weight: "note", code: "protection kept", found: "14/12/9", asked };
  test("warns of one that is coarser than the one fitted and still fine enough", () => {
    expect(reasonsOf({ after: sideOf("14/12/9"), fineness: "coarser" })).toEqual([
      kept,
      { weight: "care", code: "coarser than now" },
    ]);
  });
  test("sees no reason to go finer where what is fitted was fine enough", () => {
    expect(reasonsOf({ after: sideOf("14/12/9"), fineness: "finer" })).toEqual([
      { weight: "note", code: "finer than asked", now: "15/13/10", found: "14/12/9", asked },
    ]);
  });
  test.each([
    ["same", "15/13/10"],
    ["mixed", "15/13/10"],
    ["finer", "16/14/11"],
    ["finer", null],
  ] as const)("says no more than that it is kept by one %s, when now the code is %s", (fineness, code) => {
    expect(reasonsOf({ now: sideOf(code), after: sideOf("14/12/9"), fineness })).toEqual([kept]);
  });
});

describe("protectionReasons(facts, rating) where the manual asks for a fineness", () => {
  const rating = { beta: 75, size: 10e-6 };
  const tested = (betas: { size: number; beta: number }[] | null): SwapFacts["changed"] => {
    const [filter] = (heron.delivery ?? []).filter((part) => part.part === "filter");
    if (filter?.part !== "filter") throw new Error("no filter");
    const { statedRating: _rating, betas: _betas, ...bare } = filter;
    const part = betas === null ? bare : { ...bare, betas };
    return { ...heron, suction: [], delivery: [part] } as SwapFacts["changed"];
  };
  const last = (changed: SwapFacts["changed"]) => protectionReasons(factsOf({ changed }), rating).slice(1);
  test("has nothing to say where one filter's test reaches it", () => {
    expect(last(tested([{ size: 8e-6, beta: 200 }]))).toEqual([]);
  });
  test("refuses where the test shows that none does, and cannot say without a test", () => {
    expect(last(tested([{ size: 12e-6, beta: 20 }]))).toEqual([{ weight: "no", code: "rating not met", ...rating }]);
    expect(last(tested(null))).toEqual([{ weight: "cannot say", code: "rating not known", ...rating }]);
  });
});
