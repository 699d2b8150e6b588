import type { System } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf, litresAnHour, plainSystem, viscosity } from "../../../../../tests/support/plainSystem.js";
import { LifeGate, type Stage } from "./LifeGate.js";
import { type Caught, orderFacts } from "./OrderFacts.js";
import { stagePartOf } from "./StagePart.js";
import { stackOf } from "./stack.js";

const HEAD = 830 * 9.80665;
/** Soil, kg, that makes an element's drop at 200 L/h grow by 12 kPa. */
const SOIL = 0.6;
const own = elementOf("own", { drop: 6e3 });

/** The answer of a gate on a machine in round figures to stages that have caught so much, and to others behind the pump. */
function judged(
  given: readonly { readonly element: typeof own; readonly count: number; readonly soil: number }[],
  more: Partial<System> = {},
  others: Record<string, number> = {},
  least?: Caught,
) {
  const stack = stackOf({ ...plainSystem, ...more }, "suction");
  const stages = given.map(({ element, count }): Stage => ({ element, count, part: stagePartOf(stack, element) }));
  const { elements } = orderFacts(
    stack,
    given.map(({ element }) => element),
    3600,
    true,
  );
  const most = { stages: given.map(({ soil }) => soil), others: new Map(Object.entries(others)) };
  return new LifeGate(stack, null).judge(stages, { least: least ?? most, most }, elements);
}

/** Soil at which so many of an element of this drop just spend a room, Pa. */
const spent = (room: number, count: number, drop = 6e3) => (count * (room * count - drop) * SOIL) / 12e3;
const atChange = spent(30e3 - HEAD, 1);

describe("LifeGate.judge(stages, caught, elements)", () => {
  test.each([
    [1, atChange],
    [2, spent(30e3 - HEAD, 2)],
    [3, spent(30e3 - HEAD, 3)],
  ])(
    "of %i side by side, each with its share, lets them fill until their drop and the metre are 30 kPa",
    (count, soil) => {
      const of = (caught: number) => judged([{ element: own, count, soil: caught }]);
      expect([of(0), of(soil - 1e-5), of(soil + 1e-5)]).toEqual(["yes", "yes", "no"]);
      expect(of(soil)).toBe("too close");
    },
  );

  test("adds up stages, each by its own", () => {
    const second = elementOf("second", { drop: 4e3 });
    const of = (first: number, soil: number) =>
      judged([
        { element: own, count: 1, soil: first },
        { element: second, count: 2, soil },
      ]);
    // At 100 L/h through each of two: 2 kPa, and 6 kPa more with 600 g on each.
    const left = 30e3 - HEAD - 6e3 - 2e3;
    const behind = (2 * left * SOIL) / 6e3;
    expect([of(0, behind - 1e-5), of(0, behind + 1e-5)]).toEqual(["yes", "no"]);
    const before = (left * SOIL) / 12e3;
    expect([of(before - 1e-5, 0), of(before + 1e-5, 0)]).toEqual(["yes", "no"]);
    expect([of(before / 2, behind / 2 - 1e-5), of(before / 2, behind / 2 + 1e-5)]).toEqual(["yes", "no"]);
  });

  test("counts an element of no known capacity as it is, before and behind the pump", () => {
    const { capacityTest: _, loadingLaw: _law, ...filter } = elementOf("bare", { drop: 6e3 }).filter;
    const bare = { ...elementOf("bare", { drop: 6e3 }), filter };
    const limits = (feedPressure: number) => ({ vacuumClean: 15e3, vacuumAtChange: 30e3, feedPressure });
    const behind = (feedPressure: number) =>
      judged(
        [{ element: own, count: 1, soil: 0 }],
        { delivery: [filter], limits: limits(feedPressure) },
        { bare: 1e3 },
      );
    expect([behind(80e3 - HEAD - 12e3 - 1), behind(80e3 - HEAD - 12e3 + 1)]).toEqual(["yes", "no"]);
    const before = (atChange: number) =>
      judged(
        [
          { element: own, count: 1, soil: 0 },
          { element: bare, count: 1, soil: 1e3 },
        ],
        { limits: { vacuumClean: atChange, vacuumAtChange: atChange } },
      );
    expect([before(HEAD + 12e3 + 1), before(HEAD + 12e3 - 1)]).toEqual(["yes", "no"]);
  });

  test("keeps to an element's own terminal drop", () => {
    const limited = (terminalDrop: number) => ({ ...own, filter: { ...own.filter, terminalDrop } });
    const of = (terminalDrop: number, soil: number, count = 1) =>
      judged([{ element: limited(terminalDrop), count, soil }]);
    const soil = spent(10e3, 1);
    expect([of(10e3, soil - 1e-5), of(10e3, soil + 1e-5)]).toEqual(["yes", "no"]);
    const each = spent(10e3, 2);
    expect([of(10e3, each - 1e-5, 2), of(10e3, each + 1e-5, 2)]).toEqual(["yes", "no"]);
    expect(
      judged([
        { element: own, count: 1, soil: 0 },
        { element: limited(5e3), count: 1, soil: 0 },
      ]),
    ).toBe("no");
    expect(of(10e3, soil)).toBe("too close");
    expect(of(10e3, atChange + 1)).toBe("no");
  });

  test("counts what elements behind the pump have grown against the feed pressure alone", () => {
    const delivery = [elementOf("fine", { drop: 6e3 }).filter];
    const limits = { vacuumClean: 15e3, vacuumAtChange: 30e3, feedPressure: 50e3 };
    const of = (soil: number, fine: number) =>
      judged([{ element: own, count: 1, soil }], { delivery, limits }, { fine });
    // 80 kPa of relief less 50, the metre and 6 kPa on each side.
    const left = ((80e3 - 50e3 - HEAD - 12e3) * SOIL) / 12e3;
    expect([of(0, left - 1e-5), of(0, left + 1e-5)]).toEqual(["yes", "no"]);
    expect([of(left / 2, left / 2 - 1e-5), of(left / 2, left / 2 + 1e-5)]).toEqual(["yes", "no"]);
    const unlimited = { vacuumClean: 15e3, vacuumAtChange: 30e3 };
    expect(
      judged([{ element: own, count: 1, soil: atChange - 1e-5 }], { delivery, limits: unlimited }, { fine: 1 }),
    ).toBe("yes");
    expect(judged([{ element: own, count: 1, soil: 0 }], { delivery, limits }, {})).toBe("yes");
  });

  test("counts from the soil that is on an element behind the pump already", () => {
    const delivery = [{ ...elementOf("fine", { drop: 6e3 }).filter, restriction: 1.5 }];
    const limits = { vacuumClean: 15e3, vacuumAtChange: 30e3, feedPressure: 50e3 };
    const of = (fine: number) => judged([{ element: own, count: 1, soil: 0 }], { delivery, limits }, { fine });
    // As it is it costs 9 kPa, with 150 g on it.
    const left = 0.15 + ((80e3 - 50e3 - HEAD - 6e3 - 9e3) * SOIL) / 12e3;
    expect([of(0.15), of(left - 1e-5), of(left + 1e-5)]).toEqual(["yes", "yes", "no"]);
  });

  test("holds at every temperature of the duty", () => {
    const seasons = [
      { name: "warm", share: 0.5, temperature: 293.15 },
      { name: "cold", share: 0.5, temperature: 268.15 },
    ];
    const duty = { hoursADay: 4, daysAYear: 250, seasons };
    // Cold fuel is thicker, so what just holds at 15 degC does not.
    expect(judged([{ element: own, count: 1, soil: atChange - 1e-5 }], { duty })).toBe("no");
    expect(judged([{ element: own, count: 1, soil: 0 }], { duty })).toBe("yes");
  });

  test("holds at the warmest too, where fuel boils before it is drawn so hard that any other limit is met", () => {
    const fuel = { kind: "petrol", class: "EN 228 A", ethanol: 0 } as const;
    const limits = { vacuumClean: 90e3, vacuumAtChange: 90e3 };
    const season = (share: number, temperature: number) => ({ name: "season", share, temperature });
    const at = (...seasons: ReturnType<typeof season>[]) =>
      judged([{ element: own, count: 1, soil: 14 }], {
        fuel,
        limits,
        temperature: 268.15,
        duty: { hoursADay: 4, daysAYear: 250, seasons },
      });
    expect(at(season(1, 268.15))).toBe("yes");
    expect(at(season(0.5, 268.15), season(0.5, 308.15))).toBe("no");
  });

  test("is sure of a range of soil where both its ends agree, or the most still holds", () => {
    const least = (soil: number): Caught => ({ stages: [soil], others: new Map() });
    const of = (from: number, to: number) => judged([{ element: own, count: 1, soil: to }], {}, {}, least(from));
    expect(of(0, atChange - 1e-5)).toBe("yes");
    expect(of(atChange + 1e-5, atChange + 1)).toBe("no");
    expect(of(0, atChange + 1e-5)).toBe("too close");
    expect(of(atChange, atChange + 1)).toBe("too close");
  });
});

describe("LifeGate.judge(stages, caught, elements) of a pump that slips and relieves to the tank", () => {
  const swept = 400 * litresAnHour;
  const slip = { flow: swept / 10, rise: 80e3, dynamicViscosity: viscosity };
  const pump: System["pump"] = { kind: "fixed", flow: swept, relief: 120e3, reliefTo: "tank", slip };
  const moved = (rise: number) => (swept - (swept / 10 / 80e3) * rise) / (200 * litresAnHour);

  test("asks for the drop at the flow that is left when the limit is met", () => {
    const flow = moved(120e3 + 30e3);
    const soil = (((30e3 - HEAD) / flow - 1e3) * SOIL) / 12e3;
    const one = elementOf("one", { drop: 1e3 });
    const of = (caught: number) => judged([{ element: one, count: 1, soil: caught }], { pump });
    expect([of(soil - 1e-5), of(soil + 1e-5)]).toEqual(["yes", "no"]);
  });

  test("asks a terminal drop at the most that goes through for the most soil, at the least for the least", () => {
    const most = moved(120e3 + HEAD);
    const least = moved(120e3 + 30e3);
    const one = elementOf("one", { drop: 1e3, filter: { terminalDrop: 8e3 } });
    const soilAt = (flow: number) => ((8e3 / flow - 1e3) * SOIL) / 12e3;
    const of = (from: number, to: number) =>
      judged([{ element: one, count: 1, soil: to }], { pump }, {}, { stages: [from], others: new Map() });
    expect(of(0, soilAt(most) - 1e-5)).toBe("yes");
    expect(of(soilAt(least) - 1e-5, soilAt(most) + 1e-5)).toBe("too close");
    expect(of(soilAt(least) + 1e-5, soilAt(least) + 2e-5)).toBe("no");
  });
});
