import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem, unpredicted } from "../../../../tests/support/fleets.js";
import { check } from "../check/check.js";
import { mapParts } from "../choose/mapParts.js";
import { changeable, changedOf, elementOf } from "./changedOf.js";
import { duplexOf } from "./duplexOf.js";

const heron = unpredicted(demoSystem("heron"));
const T = 288.15;
const shutting = (system: System, ...names: string[]): System =>
  mapParts(system, (part) => (part.part === "filter" ? { ...part, blocked: names.includes(part.name) } : part));
const duplexed = (system: System, ...names: string[]) =>
  duplexOf(
    system,
    changedOf(system, names).map((spot) => elementOf(spot, changeable(system))),
    T,
  );
const vacuumOf = (system: System) => check(system, { temperatures: [T] }).points[0]?.vacuum;

test("duplexOf(heron) changes a prefilter while the other carries the flow, and reads what check says of that", () => {
  const alone = check(shutting(heron, "prefilter A"), { temperatures: [T] });
  expect(duplexed(heron)).toEqual({
    first: "prefilter A",
    through: ["prefilter B"],
    opened: false,
    vacuum: alone.points[0]?.vacuum,
    verdict: alone.verdict,
  });
  expect(duplexed(heron, "prefilter B")).toMatchObject({ first: "prefilter B", through: ["prefilter A"] });
});

test("duplexOf(system) opens first what is shut off beside the element, and reads through it", () => {
  const standby = shutting(heron, "prefilter B");
  expect(duplexed(standby)).toMatchObject({
    first: "prefilter A",
    through: ["prefilter B"],
    opened: true,
    vacuum: vacuumOf(shutting(heron, "prefilter A")),
  });
  // A fine filter that is shut stays shut: it stands in no bank.
  expect(duplexed(shutting(heron, "prefilter B", "fine filter"))?.vacuum).toBeNull();
});

test("duplexOf(system) is null where no element stands beside another", () => {
  expect(duplexed(heron, "fine filter")).toBeNull();
});
