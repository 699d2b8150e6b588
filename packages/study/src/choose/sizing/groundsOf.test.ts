import type { System } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { plainSystem, WARM } from "../../../../../tests/support/plainSystem.js";
import { type Asked, groundsOf, rangeOf } from "./groundsOf.js";

const HOUR = 3600;
const asked: Asked = { code: "20/18/15", rating: null, interval: 100 * HOUR };
const rating = { beta: 75, size: 10e-6 };
const without = (...keys: (keyof System)[]) =>
  Object.fromEntries(Object.entries(plainSystem).filter(([key]) => !keys.includes(key as keyof System))) as never;

describe("groundsOf(system, asked, temperatures)", () => {
  const grounds = (system: Partial<System> = {}, more: Partial<Asked> = {}, temperatures = [WARM]) =>
    groundsOf({ ...plainSystem, ...system }, { ...asked, ...more }, temperatures);

  test("are none where all is known, by code or by fineness", () => {
    expect(grounds()).toEqual([]);
    expect(grounds({}, { code: null, rating })).toEqual([]);
    expect(grounds({}, { rating })).toEqual([]);
  });

  test("are that nothing is asked, with neither code nor fineness", () => {
    expect(grounds({}, { code: null })).toEqual([{ code: "nothing asked" }]);
  });

  test("are that there is no interval", () => {
    expect(grounds({}, { interval: null })).toEqual([{ code: "no interval" }]);
    expect(groundsOf(without("service"), { ...asked, interval: null }, [WARM])).toEqual([{ code: "no interval" }]);
  });

  test("are an interval longer than the manual allows: at most, or the usual where it says no more", () => {
    const longer = (service: System["service"], interval: number) =>
      groundsOf({ ...(without("service") as System), ...(service ? { service } : {}) }, { ...asked, interval }, [WARM]);
    expect(longer({ interval: 100 }, 100)).toEqual([]);
    expect(longer({ interval: 100 }, 101)).toEqual([
      { code: "longer than the manual allows", interval: 101, most: 100 },
    ]);
    expect(longer({ interval: 100, atMost: 150 }, 150)).toEqual([]);
    expect(longer({ interval: 100, atMost: 150 }, 151)).toEqual([
      { code: "longer than the manual allows", interval: 151, most: 150 },
    ]);
    expect(longer(undefined, 1e9)).toEqual([]);
  });

  test("are that there is no vacuum limit, where none is stated and none is published", () => {
    const pump = { kind: "pulse", flow: 1e-5, suction: 30e3 } as const;
    expect(grounds({ pump, limits: {} })).toEqual([{ code: "no vacuum limit" }]);
    expect(grounds({ pump })).toEqual([]);
    expect(grounds({ limits: {} })).toEqual([]);
  });

  test.each([
    [["duty"], ["no duty"]],
    [["deliveredFuel"], ["no delivered fuel"]],
    [
      ["duty", "deliveredFuel"],
      ["no duty", "no delivered fuel"],
    ],
  ] as const)("are that no life can be reckoned without %j", (keys, why) => {
    expect(groundsOf(without(...keys), asked, [WARM])).toEqual([{ code: "life cannot be reckoned", why }]);
  });

  test("are that the delivered fuel states no solids", () => {
    expect(grounds({ deliveredFuel: { water: 0.1 } })).toEqual([{ code: "no solids" }]);
  });

  test("are the first temperature at which the fuel is no promise", () => {
    const cold = [WARM, 253, 252];
    expect(grounds({}, {}, cold)).toEqual([{ code: "fuel not judged", temperature: 253 }]);
  });

  test("are all of them, in that order", () => {
    const bare = without("service", "deliveredFuel", "limits") as System;
    const pump = { kind: "pulse", flow: 1e-5, suction: 30e3 } as const;
    const found = groundsOf({ ...bare, limits: {}, pump }, { code: null, rating: null, interval: null }, [240]);
    expect(found.map(({ code }) => code)).toEqual([
      "nothing asked",
      "no interval",
      "no vacuum limit",
      "life cannot be reckoned",
      "fuel not judged",
    ]);
  });
});

describe("rangeOf(temperatures)", () => {
  test("goes from the coldest to the warmest in even steps of 5 K at most", () => {
    expect(rangeOf([280, 270])).toEqual([270, 275, 280]);
    expect(rangeOf([270, 280.3])).toEqual([270, 270 + 10.3 / 3, 270 + 20.6 / 3, 280.3]);
    expect(rangeOf([270, 275])).toEqual([270, 275]);
    expect(rangeOf([270, 271])).toEqual([270, 271]);
  });

  test("has those asked for among them, each once, in order", () => {
    expect(rangeOf([280, 272, 270, 275, 272])).toEqual([270, 272, 275, 280]);
  });

  test("is one for one", () => {
    expect(rangeOf([280])).toEqual([280]);
    expect(rangeOf([280, 280])).toEqual([280]);
  });
});
