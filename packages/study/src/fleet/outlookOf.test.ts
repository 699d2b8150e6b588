import type { System, SystemPart } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { outlookOf } from "./outlookOf.js";

const heron = demoSystem("heron");

/** Every filter of a path, those in banks too, changed. */
const soiled = (parts: readonly SystemPart[], restriction: number): SystemPart[] =>
  parts.map((part): SystemPart => {
    if (part.part === "bank") return { ...part, branches: part.branches.map((one) => soiled(one, restriction)) };
    return part.part === "filter" ? { ...part, restriction } : part;
  });

test("outlookOf(heron) is of its three elements, the prefilters before the pump", () => {
  const { elements } = outlookOf(heron);
  expect(elements.map(({ name, isSuction }) => [name, isSuction])).toEqual([
    ["prefilter A", true],
    ["prefilter B", true],
    ["fine filter", false],
  ]);
  expect(elements[0]?.figures).not.toContain("blocked");
});

test("outlookOf(heron) names first the element that makes up most of the rise, and the limits a gauge is held against", () => {
  const { first, vacuum, life } = outlookOf(heron);
  expect([...first]).toEqual(["fine filter"]);
  expect(life.elements).toHaveLength(3);
  expect(vacuum).toEqual({ clean: 20e3, atChange: 40e3 });
});

test("outlookOf(system) takes its elements for new, whatever soil the file states in a bank or after the pump", () => {
  const { delivery = [] } = heron;
  const dirty: System = { ...heron, suction: soiled(heron.suction, 2), delivery: soiled(delivery, 3) };
  expect(outlookOf(dirty)).toEqual(outlookOf(heron));
});

test("outlookOf(system) has no element for a filter that is shut off", () => {
  const shut = (parts: readonly SystemPart[]): SystemPart[] =>
    parts.map((part): SystemPart => {
      if (part.part === "bank") return { ...part, branches: part.branches.map(shut) };
      return part.part === "filter" && part.name === "prefilter B" ? { ...part, blocked: true } : part;
    });
  const { elements } = outlookOf({ ...heron, suction: shut(heron.suction) });
  expect(elements.map(({ name }) => name)).toEqual(["prefilter A", "fine filter"]);
});

test("outlookOf(system) holds a gauge against the limit at change alone where no other is known, and against none without", () => {
  const boat = demoSystem("workboat"); // petrol, for which nothing is published
  expect(outlookOf({ ...boat, limits: { vacuumAtChange: 14e3 } }).vacuum).toEqual({ clean: null, atChange: 14e3 });
  expect(outlookOf({ ...boat, limits: {} }).vacuum).toBeNull();
  expect(outlookOf(demoSystem("generator")).vacuum).toBeNull();
});

test("outlookOf(system) holds no gauge against a limit where gravity feeds, though one is stated", () => {
  const generator = demoSystem("generator");
  expect(outlookOf({ ...generator, limits: { ...generator.limits, vacuumAtChange: 14e3 } }).vacuum).toBeNull();
});
