import { loadAtRatio, resistanceRatio } from "@thirstline/core";
import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { factsOf, type LifeFacts } from "../life/factsOf.js";
import { sidePath } from "./SidePath.js";
import { sideNames } from "./sideNames.js";

const lifeOf = (system: System): LifeFacts => {
  const facts = factsOf(system);
  if (!("given" in facts)) throw new Error("no facts");
  return facts;
};
const heron = () => lifeOf(demoSystem("heron"));
const PRE = ["prefilter A", "prefilter B"];
const none = new Map<string, number>();

test("sidePath(names, null, stated) takes all elements to grow alike, where life predicts nothing", () => {
  const { at, ...rest } = sidePath(["one", "other"], null, none);
  expect(rest).toEqual({ names: ["one", "other"], lead: "one", by: "equal soil", begun: 1, growing: null });
  expect(at(3)).toEqual(
    new Map([
      ["one", 3],
      ["other", 3],
    ]),
  );
  expect(sidePath([], null, none).lead).toBe("");
});

test("sidePath(names, facts, stated) has two elements that are alike fill alike", () => {
  const path = sidePath(PRE, heron(), none);
  expect(path).toMatchObject({ lead: "prefilter A", by: "life", names: PRE });
  const [one, other] = path.growing ?? [];
  expect(one).toMatchObject({ name: "prefilter A", soil: 0 });
  expect(other?.rate).toBe(one?.rate);
  for (const ratio of [1, 2.5, 40]) {
    expect(path.at(ratio).get("prefilter A")).toBe(ratio);
    expect(path.at(ratio).get("prefilter B")).toBeCloseTo(ratio, 6);
  }
});

test("sidePath(names, facts, stated) takes equal soil where life cannot say of one of them, or there is none", () => {
  const facts = heron();
  expect(sidePath([...PRE, "nobody's"], facts, none).by).toBe("equal soil");
  expect(sidePath([], facts, none)).toMatchObject({ by: "equal soil", growing: null, lead: "" });
  const [first, ...others] = facts.elements.elements;
  const lawless = { ...facts, elements: { ...facts.elements, elements: [{ ...first, law: null }, ...others] } };
  expect(sidePath(PRE, lawless as unknown as LifeFacts, none).by).toBe("equal soil");
  const clear = { ...facts, elements: { ...facts.elements, elements: [{ ...first, efficiency: null }, ...others] } };
  expect(sidePath(PRE, clear as unknown as LifeFacts, none).by).toBe("equal soil");
});

test("sidePath(names, facts, stated) goes on from the soil that the file states, by the element that goes first", () => {
  const path = sidePath(PRE, heron(), new Map([["prefilter B", 3]]));
  expect(path.lead).toBe("prefilter B");
  const [a, b] = path.growing ?? [];
  expect(a?.soil).toBe(0);
  if (!b) throw new Error("prefilter B");
  expect(resistanceRatio(b.law, b.soil)).toBeCloseTo(3, 9);
  // When B is at 3, A has caught nothing; when B is at 5, A has caught what B has since.
  expect(path.at(3).get("prefilter A")).toBeCloseTo(1, 9);
  const since = loadAtRatio(b.law, 5) - loadAtRatio(b.law, 3);
  expect(path.at(5).get("prefilter A")).toBeCloseTo(resistanceRatio(b.law, since), 6);
  expect(path.at(5).get("prefilter B")).toBe(5);
  // Less than stated: A cannot have caught less than nothing.
  expect(path.at(2).get("prefilter A")).toBe(1);
});

test("sidePath(names, facts, stated) leads with the element that comes to four times clean first", () => {
  const facts = lifeOf(demoSystem("pickup-staged"));
  const names = ["prefilter P5", "fine filter F3"];
  const timeTo = (
    ratio: number,
    { law, rate, soil }: { law: Parameters<typeof loadAtRatio>[0]; rate: number; soil: number },
  ) => (loadAtRatio(law, ratio) - soil) / rate;
  for (const order of [names, [...names].reverse()]) {
    const { growing, lead, at } = sidePath(order, facts, none);
    const times = new Map(growing?.map((one) => [one.name, timeTo(4, one)]));
    const soonest = [...times].sort((one, other) => one[1] - other[1])[0]?.[0];
    expect(lead).toBe(soonest);
    const leading = growing?.find(({ name }) => name === lead);
    const following = growing?.find(({ name }) => name !== lead);
    if (!leading || !following) throw new Error("two");
    const ratio = at(4).get(following.name) ?? 0;
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThan(4);
    // Both have filled for as long.
    expect(timeTo(ratio, following) / timeTo(4, leading)).toBeCloseTo(1, 6);
  }
});

test("sidePath(names, facts, stated) catches in proportion to the hours and the dirt, and over every season", () => {
  const rateOf = (facts: LifeFacts) => sidePath(PRE, facts, none).growing?.[0]?.rate ?? 0;
  const facts = heron();
  const { given } = facts;
  const usual = rateOf(facts);
  expect(usual).toBeGreaterThan(0);
  const doubled = given.phases.map((phase) => ({ ...phase, duration: 2 * phase.duration }));
  expect(rateOf({ ...facts, given: { ...given, phases: doubled } }) / usual).toBeCloseTo(2, 9);
  const each = given.phases.map((phase) => rateOf({ ...facts, given: { ...given, phases: [phase] } }));
  expect(each.reduce((sum, one) => sum + one, 0) / usual).toBeCloseTo(1, 9);
  const halved = given.phases.map((phase) => ({
    ...phase,
    loads: phase.loads.map((load) => ({ ...load, share: load.share / 2 })),
  }));
  expect(rateOf({ ...facts, given: { ...given, phases: halved } }) / usual).toBeCloseTo(0.5, 9);
});

test("sidePath(names, facts, stated) catches as of clean elements, whatever the file states of them", () => {
  const system = demoSystem("heron");
  const soiled = {
    ...system,
    delivery: system.delivery?.map((part) => (part.part === "filter" ? { ...part, restriction: 5 } : part)),
    suction: system.suction.map((part) =>
      part.part === "bank"
        ? {
            ...part,
            branches: part.branches.map((branch, at) =>
              branch.map((one) => (at === 0 && one.part === "filter" ? { ...one, restriction: 8 } : one)),
            ),
          }
        : part,
    ),
  } as System;
  const rates = (of: System) => sidePath(PRE, lifeOf(of), none).growing?.map(({ rate }) => rate);
  expect(rates(soiled)).toEqual(rates(system)?.map((one) => expect.closeTo(one, 9)));
});

test("sideNames(system) has the elements of each side that are not shut, banks and tanks' own paths included", () => {
  expect(sideNames(demoSystem("heron"))).toEqual({ suction: PRE, delivery: ["fine filter"] });
  const { delivery: _, ...system } = demoSystem("heron");
  const shut = system.suction.flatMap((part) =>
    part.part === "bank"
      ? part.branches.flat().map((one) => (one.part === "filter" ? { ...one, blocked: true } : one))
      : [],
  );
  const [first] = shut;
  const path = [{ ...first, name: "tank filter", blocked: false }, ...shut];
  const tanks = system.tanks.map((tank) => ({ ...tank, path }));
  expect(sideNames({ ...system, tanks } as System)).toEqual({ suction: ["tank filter", ...PRE], delivery: [] });
});

test("sidePath(names, facts, stated) begins where the file states its lead, or the worst where all grow alike", () => {
  const stated = new Map([
    ["prefilter A", 2],
    ["prefilter B", 3],
    ["nobody's", 9],
  ]);
  expect(sidePath(PRE, heron(), stated)).toMatchObject({ lead: "prefilter B", begun: 3 });
  expect(sidePath(PRE, heron(), none).begun).toBe(1);
  expect(sidePath(PRE, null, stated)).toMatchObject({ lead: "prefilter A", begun: 3 });
  expect(sidePath([], null, stated).begun).toBe(1);
});
