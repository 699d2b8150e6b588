import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { factsOf } from "./factsOf.js";

const heron = demoSystem("heron");
const reasonsOf = (system: object) => {
  const facts = factsOf(system as System);
  return "reasons" in facts ? facts.reasons.map(({ code }) => code) : [];
};
const without = (...keys: (keyof System)[]) =>
  Object.fromEntries(Object.entries(heron).filter(([key]) => !keys.includes(key as keyof System)));

test("factsOf(heron) is all that a life is worked out from", () => expect(reasonsOf(heron)).toEqual([]));

test.each([
  ["duty", ["no duty"]],
  ["deliveredFuel", ["no delivered fuel"]],
] as const)("factsOf(heron without its %s) says what is missing", (key, codes) => {
  expect(reasonsOf(without(key))).toEqual(codes);
});

test("factsOf(heron without duty and delivered fuel) names both", () => {
  expect(reasonsOf(without("duty", "deliveredFuel"))).toEqual(["no duty", "no delivered fuel"]);
});

test("factsOf(system without a filter) says that there is none, and no more of how they grow", () => {
  expect(reasonsOf({ ...heron, suction: [], delivery: [] })).toEqual(["no filter"]);
});

test("factsOf(system) hands on each stated terminal drop, by the element's name", () => {
  const delivery = heron.delivery?.map((part) => (part.part === "filter" ? { ...part, terminalDrop: 70e3 } : part));
  const facts = factsOf({ ...heron, delivery } as System);
  if (!("given" in facts)) throw new Error("no facts");
  expect(facts.given.terminals?.get("fine filter")).toBe(70e3);
});

const dirty = (more: object) => {
  const { deliveredFuel } = heron;
  const facts = factsOf({ ...heron, deliveredFuel: { ...deliveredFuel, dirtyDelivery: more } } as unknown as System);
  return "given" in facts ? facts.given.dirty : undefined;
};

test("factsOf(system) counts of a dirty delivery what it brings over and above the usual, bin by bin", () => {
  const found = dirty({ after: 360, volume: 2, code: "24/22/19" });
  expect(found).toMatchObject({ at: 360, volume: 2 });
  expect(Math.min(...(found?.extra.masses ?? [-1]))).toBeGreaterThanOrEqual(0);
  const more = dirty({ after: 360, volume: 2, code: "25/23/20" });
  const sum = (masses: Float64Array | undefined) => masses?.reduce((total, one) => total + one, 0) ?? 0;
  // A code more is twice as many particles.
  expect(sum(more?.extra.masses)).toBeGreaterThan(1.9 * sum(found?.extra.masses));
});

test("factsOf(system) has no dirty delivery where it is no dirtier than the usual, or says nothing", () => {
  expect(dirty({ after: 360, volume: 2, code: "10/8/5" })).toBeUndefined();
  expect(dirty({ after: 360, volume: 2 })).toBeUndefined();
});
