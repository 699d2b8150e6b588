import { readFileSync } from "node:fs";
import { readSystem, type System, withDraw } from "@thirstline/spec";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { curve } from "../curve/curve.js";
import { curveDraws, curveSpreadOf } from "./curveSpread.js";
import { drawsOf } from "./drawsOf.js";
import { isUncertain, lifeDraws } from "./lifeDraws.js";
import { suctionUnknowns } from "./suctionUnknowns.js";
import { unknownsOf } from "./unknownsOf.js";

const read = readSystem(readFileSync(new URL("../../../../tests/journeys/cli/files/spread.yaml", import.meta.url)), {
  file: "spread.yaml",
});
if ("faults" in read) throw new Error("faults");
const { system } = read;
const [warm, cold] = [288.15, 268.15];
const options = { to: 4e-5, points: 3 };
const spreadsOf = (...spreads: readonly object[]) => ({ ...system, spreads }) as unknown as System;
const spread = (path: readonly (string | number)[], group?: number) => ({
  path,
  low: 1,
  high: 2,
  ...(group === undefined ? {} : { group }),
});

test("suctionUnknowns(system) counts what bears on pressures, and holds the rest still", () => {
  const { count, places } = suctionUnknowns(
    spreadsOf(spread(["deliveredFuel", "solids"]), spread(["demand", "burn"]), spread(["altitude"])),
  );
  expect(count).toBe(2);
  expect(places([0.1, 0.9])).toEqual([0.5, 0.1, 0.9]);
  expect(suctionUnknowns({ ...system, spreads: undefined } as unknown as System).count).toBe(0);
});

test.each([
  "deliveredFuel",
  "duty",
  "service",
  "protection",
  "capacityTest",
  "lighterCapacityTest",
  "betas",
  "statedRating",
  "leak",
  "bowl",
  "separation",
  "absorbs",
])("suctionUnknowns(system) has no pressure depend on %s, wherever it stands", (key) => {
  expect(suctionUnknowns(spreadsOf(spread([key]), spread(["suction", 1, key, 0]))).count).toBe(0);
});

test("suctionUnknowns(system) gives figures of one group one number", () => {
  const { count, places } = suctionUnknowns(
    spreadsOf(spread(["suction", 0, "bore"], 0), spread(["altitude"]), spread(["suction", 2, "bore"], 0)),
  );
  expect(count).toBe(2);
  expect(places([0.2, 0.8])).toEqual([0.2, 0.8, 0.2]);
});

test("unknownsOf(system) counts spreads, makes whose capacity is assumed, and captures known by one beta", () => {
  // Six spreads; both elements' makes are assumed; the prefilter's capture is known by one beta.
  const { count, drawn } = unknownsOf(system);
  const spreads = system.spreads?.length ?? 0;
  expect(count).toBe(spreads + 2 + 1);
  const at = Array.from({ length: count }, (_, place) => place / 100);
  const { system: own, guess } = drawn(at);
  expect(own).toEqual(withDraw(system, at.slice(0, spreads)));
  expect(guess.capacity("cellulose")).toBe(spreads / 100);
  expect(guess.capacity("glass or synthetic")).toBe((spreads + 1) / 100);
  expect(guess.capture("20 at 0.00001")).toBe((spreads + 2) / 100);
  // What has no number stands half-way.
  const halfway = drawn([]);
  expect([halfway.guess.capacity("cellulose"), halfway.guess.capture("20 at 0.00001")]).toEqual([0.5, 0.5]);
  expect(halfway.system).toEqual(
    withDraw(
      system,
      at.slice(0, spreads).map(() => 0.5),
    ),
  );
});

test("unknownsOf(system) gives figures of one group one number, and alike elements too", () => {
  const grouped = spreadsOf(spread(["altitude"], 0), spread(["temperature"]), spread(["altitude"], 0));
  const { count } = unknownsOf(grouped);
  expect(count).toBe(2 + 2 + 1);
  const [filter] = system.suction.filter(({ part }) => part === "filter");
  const twice = { ...system, suction: [...system.suction, filter] } as System;
  expect(unknownsOf(twice).count).toBe(unknownsOf(system).count);
});

test("unknownsOf(system) does not count elements that are shut, and never more than 40 numbers", () => {
  const shut = {
    ...system,
    suction: system.suction.map((part) => (part.part === "filter" ? { ...part, blocked: true } : part)),
  } as System;
  expect(unknownsOf(shut).count).toBe(unknownsOf(system).count - 2);
  const many = spreadsOf(...Array.from({ length: 50 }, (_, at) => spread(["suction", at, "bore"])));
  expect(unknownsOf(many).count).toBe(40);
});

test("isUncertain(system) is whether draws can differ", () => {
  expect(isUncertain(system)).toBe(true);
  const { spreads: _, ...sure } = demoSystem("heron");
  expect(isUncertain(sure)).toBe(false);
});

test("lifeDraws(system, slice) is no number where a draw makes a system that cannot be, or whose life cannot be told", () => {
  const { duty: _, ...idle } = system;
  expect([...lifeDraws(idle, { from: 0, to: 3, seed: 1 })]).toEqual([Number.NaN, Number.NaN, Number.NaN]);
  const impossible = { ...system, spreads: [{ path: ["suction", 0, "bore"], low: -2, high: -1 }] } as unknown as System;
  expect([...lifeDraws(impossible, { from: 4, to: 5, seed: 1 })]).toEqual([Number.NaN]);
});

test("curveDraws(system, options, slice) has each draw's own curve: vacuums, then feed pressures, at each temperature", () => {
  const two = { ...options, temperatures: [warm, cold] };
  const draws = curveDraws(system, two, { from: 1, to: 3, seed: 4 });
  expect(draws).toHaveLength(2 * 2 * 2 * 3);
  const unknowns = suctionUnknowns(system);
  const wanted = [1, 2].flatMap((index) => {
    const drawn = withDraw(system, unknowns.places(drawsOf(unknowns.count, 4)(index)));
    return curve(drawn, two).points.flatMap(({ clean }) => [
      ...(clean?.vacuum.middle ?? []),
      ...(clean?.feedPressure?.middle ?? []),
    ]);
  });
  expect([...draws]).toEqual(wanted);
});

test("curveDraws(system, options, slice) leaves gaps where a draw has no figure", () => {
  const nan = Number.NaN;
  const impossible = { ...system, spreads: [{ path: ["suction", 0, "bore"], low: -2, high: -1 }] } as unknown as System;
  expect([...curveDraws(impossible, options, { from: 0, to: 1, seed: 1 })]).toEqual([nan, nan, nan, nan, nan, nan]);
  const shut = { ...system, tanks: system.tanks.map((tank) => ({ ...tank, vent: { kind: "blocked" } })) } as System;
  expect([...curveDraws(shut, options, { from: 0, to: 1, seed: 1 })]).toEqual([nan, nan, nan, nan, nan, nan]);
  // A pulse pump's feed pressure is not known, its vacuum is.
  const pulse = { ...system, pump: { kind: "pulse", flow: 5e-5, suction: 3e4 } } as System;
  const [first, , , feed] = curveDraws(pulse, options, { from: 0, to: 1, seed: 1 });
  expect([Number.isNaN(first), Number.isNaN(feed)]).toEqual([false, true]);
});

test("curveSpreadOf(draws, temperatures, points) takes every point of every temperature by itself", () => {
  // Ten draws of two temperatures of two points: vacuums, then feed pressures, of each.
  const draws = Array.from({ length: 10 }, (_, at) => [
    ...[100, 200, 300, 400, 500, 600].map((one) => one + at),
    Number.NaN,
    Number.NaN,
  ]).flat();
  expect(curveSpreadOf(Float64Array.from(draws), 2, 2)).toEqual([
    {
      vacuum: { low: Float64Array.of(101, 201), high: Float64Array.of(109, 209) },
      feedPressure: { low: Float64Array.of(301, 401), high: Float64Array.of(309, 409) },
    },
    { vacuum: { low: Float64Array.of(501, 601), high: Float64Array.of(509, 609) }, feedPressure: null },
  ]);
});

test("curveSpreadOf(draws, temperatures, points) keeps a feed pressure that is known at some of its points", () => {
  const [one] = curveSpreadOf(Float64Array.of(1, 2, 3, Number.NaN), 1, 2);
  expect(one?.feedPressure).toEqual({ low: Float64Array.of(3, Number.NaN), high: Float64Array.of(3, Number.NaN) });
});
