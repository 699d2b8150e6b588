import type { System } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf, plainSystem, WARM } from "../../../../tests/support/plainSystem.js";
import type { SwapSide } from "./SwapAnswer.js";
import type { SwapFacts } from "./SwapFacts.js";
import { supplyReasons } from "./swapSupply.js";

const HOUR = 3600;
const COLD = 263.15;
const WAXED = 243.15;
const [lift] = plainSystem.suction;
/** An element of this drop, Pa, in the place; 15 kPa are the clean limit and 30 the one at change, 8.14 the metre costs. */
const machine = (drop: number): System => ({
  ...plainSystem,
  suction: [...(lift ? [lift] : []), elementOf("own", { drop }).filter],
});
const side = (more: Partial<SwapSide> = {}) =>
  ({
    lifeKnown: true,
    lifeReasons: [],
    life: null,
    fillingUnknown: null,
    spread: null,
    starves: "below",
    ...more,
  }) as never;
/** Facts of a swap; `after` is the side after it. */
interface Facts extends Partial<SwapFacts> {
  readonly after?: SwapSide;
}
const factsOf = ({ after: then = side(), ...more }: Facts) =>
  ({ system: plainSystem, changed: machine(1e3), now: side(), then, temperatures: [WARM], ...more }) as SwapFacts;
const lasts = { weight: "note", code: "lasts", time: null, interval: 100 * HOUR };

describe("supplyReasons(facts) of what flows", () => {
  const flowing = (drop: number, temperatures = [WARM]) =>
    supplyReasons(factsOf({ changed: machine(drop), temperatures }));

  test("has nothing to say where all holds", () => expect(flowing(1e3)).toEqual([lasts]));

  test("refuses what starves the engine, with the first temperature at which it does and where that begins", () => {
    expect(flowing(25e3, [WARM - 1, WARM])).toEqual([
      {
        weight: "no",
        code: "starves",
        point: expect.objectContaining({ temperature: WARM - 1, verdict: "starves" }),
        below: "below",
      },
      lasts,
    ]);
  });

  test("takes care where little is in hand", () => {
    expect(flowing(14e3)).toEqual([
      { weight: "care", code: "tight", point: expect.objectContaining({ temperature: WARM, verdict: "tight" }) },
      lasts,
    ]);
  });

  test("cannot say at a temperature at which fuel is not judged", () => {
    expect(flowing(1e3, [WAXED, WARM])).toEqual([
      { weight: "cannot say", code: "not judged", point: expect.objectContaining({ temperature: WAXED }) },
      lasts,
    ]);
  });

  test("says all of them, each by the temperature where it is so", () => {
    const codes = (drop: number) =>
      flowing(drop, [WAXED, COLD, WARM]).map((one) =>
        "point" in one ? `${one.code} ${one.point.temperature}` : one.code,
      );
    expect(codes(14e3)).toEqual([`starves ${COLD}`, `not judged ${WAXED}`, `tight ${WARM}`, "lasts"]);
  });
});

describe("supplyReasons(facts) of how long it lasts", () => {
  const lasting = (after: Partial<SwapSide>, now: Partial<SwapSide> = {}, system: System = plainSystem) =>
    supplyReasons(factsOf({ system, now: side(now), after: side(after) }));
  const spread = (chance: number) => ({ chance, chanceError: 0.01, draws: 200 }) as SwapSide["spread"];
  const sourced = { ...plainSystem, service: { interval: 100 * HOUR, source: "manual" } };
  const { service: _, ...open } = plainSystem;

  test("is enough to or beyond the interval", () => {
    expect(lasting({})).toEqual([lasts]);
    expect(lasting({ life: 100 * HOUR })).toEqual([{ ...lasts, time: 100 * HOUR }]);
  });

  test("refuses what does not last the interval, and names who asks for it", () => {
    const early = { weight: "no", code: "early", time: 99 * HOUR, interval: 100 * HOUR };
    expect(lasting({ life: 99 * HOUR })).toEqual([{ ...early, source: null }]);
    expect(lasting({ life: 99 * HOUR }, {}, sourced)).toEqual([{ ...early, source: "manual" }]);
  });

  test("says nothing of what starves from the first, which is said already, nor without an interval", () => {
    expect(lasting({ life: 0 })).toEqual([]);
    expect(lasting({}, {}, open)).toEqual([]);
    expect(lasting({ life: 1 }, {}, open)).toEqual([]);
  });

  test("cannot say where no life is known; that of the one fitted not being known either is only noted", () => {
    const reasons: SwapSide["lifeReasons"] = [{ code: "no duty" }];
    const unknown = { lifeKnown: false, lifeReasons: reasons };
    expect(lasting(unknown)).toEqual([{ weight: "cannot say", code: "life not known", reasons }]);
    expect(lasting(unknown, { lifeKnown: false })).toEqual([{ weight: "note", code: "life not known", reasons }]);
  });

  test.each(["catch", "capacity"] as const)(
    "cannot say where its %s is not known, unless others end it early",
    (why) => {
      expect(lasting({ fillingUnknown: why })).toEqual([{ weight: "cannot say", code: "filling not known", why }]);
      expect(lasting({ fillingUnknown: why, life: HOUR })[0]).toMatchObject({ code: "early" });
    },
  );

  test("cannot say where what is only estimated decides", () => {
    const unsettled = { code: "unsettled", early: 1, late: null } as const;
    const lifeReasons: SwapSide["lifeReasons"] = [{ code: "no service interval" }, unsettled];
    expect(lasting({ lifeReasons })).toEqual([{ weight: "cannot say", code: "life not known", reasons: [unsettled] }]);
    expect(lasting({ lifeReasons: lifeReasons.slice(0, 1) })).toEqual([lasts]);
  });

  test("takes care from a chance of one in twenty of starving before the interval on", () => {
    const care = { weight: "care", code: "may starve early", chanceError: 0.01, interval: 100 * HOUR, draws: 200 };
    expect(lasting({ spread: spread(0.05) })).toEqual([{ ...care, chance: 0.05 }]);
    expect(lasting({ spread: spread(0.5) })).toEqual([{ ...care, chance: 0.5 }]);
    expect(lasting({ spread: spread(0.049) })).toEqual([lasts]);
  });
});
