import { readFileSync } from "node:fs";
import { readSystem, withDraw } from "@thirstline/spec";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { check } from "../check/check.js";
import { checkDraws, checkSpreadOf, isSuctionUncertain } from "./checkSpread.js";
import { drawsOf } from "./drawsOf.js";
import { suctionUnknowns } from "./suctionUnknowns.js";

const read = readSystem(readFileSync(new URL("../../../../tests/journeys/cli/files/spread.yaml", import.meta.url)), {
  file: "spread.yaml",
});
if ("faults" in read) throw new Error("faults");
const { system } = read;
const [warm, cold] = [288.15, 268.15];
const options = { temperatures: [warm, cold] };

test("isSuctionUncertain(system) is whether the file spreads anything that check reads", () => {
  expect(isSuctionUncertain(system)).toBe(true);
  expect(isSuctionUncertain(demoSystem("heron"))).toBe(false);
});

test("checkDraws(system, options, slice) draws a slice as the whole has it there, one temperature after another", () => {
  const whole = checkDraws(system, options, { from: 0, to: 6, seed: 1 });
  expect(whole).toHaveLength(6 * 2 * 4);
  expect(checkDraws(system, options, { from: 2, to: 5, seed: 1 })).toEqual(whole.slice(2 * 8, 5 * 8));
  const alone = checkDraws(system, { temperatures: [cold] }, { from: 0, to: 6, seed: 1 });
  for (let at = 0; at < 6; at++) expect(whole.slice(8 * at + 4, 8 * at + 8)).toEqual(alone.slice(4 * at, 4 * at + 4));
  expect(checkDraws(system, {}, { from: 0, to: 2, seed: 1 })).toHaveLength(2 * 4);
});

test("checkDraws(system, options, slice) scatters about what check says without spreads", () => {
  const draws = checkDraws(system, { temperatures: [warm] }, { from: 0, to: 40, seed: 1 });
  const [spread] = checkSpreadOf(draws, 1);
  const [point] = check(system, { temperatures: [warm] }).points;
  expect(spread?.draws).toBe(40);
  expect(spread?.vacuum.low).toBeLessThan(point?.vacuum.middle ?? 0);
  expect(spread?.vacuum.high).toBeGreaterThan(point?.vacuum.middle ?? 0);
});

test("checkSpreadOf(draws, temperatures) takes each figure of each temperature by itself, and the share of draws that break", () => {
  const warmDraw = (at: number) => [1000 + at, 50, 0.5, at < 1 ? 1 : 0];
  const coldDraw = (at: number) => [2000 + at, Number.NaN, -0.1, 1];
  const draws = Float64Array.from([0, 1, 2, 3].flatMap((at) => [...warmDraw(at), ...coldDraw(at)]));
  const [one, other] = checkSpreadOf(draws, 2);
  expect(one?.vacuum.middle).toBe(1002);
  expect(one?.feedPressure).toEqual({ low: 50, middle: 50, high: 50 });
  expect(one?.inHand.middle).toBe(0.5);
  expect(one?.broken?.chance).toBe(0.25);
  expect(other?.vacuum.middle).toBe(2002);
  expect(other?.broken?.chance).toBe(1);
});

test("checkSpreadOf(draws, temperatures) leaves out draws that make no system, and says nothing where no draw can", () => {
  const nan = Number.NaN;
  const [half] = checkSpreadOf(Float64Array.of(1000, 50, 0.5, 0, nan, nan, nan, nan), 1);
  expect(half?.draws).toBe(1);
  expect(checkSpreadOf(Float64Array.of(1000, 50, 0.5, nan, 1000, 50, 0.5, nan), 1)[0]?.broken).toBeNull();
});

test("checkDraws(system, options, slice) has what check says of each draw, 1 where it starves", () => {
  const two = { temperatures: [warm, cold] };
  // A limit that about half of all draws break.
  const [, spread] = checkSpreadOf(checkDraws(system, two, { from: 0, to: 20, seed: 1 }), 2);
  const strict = {
    ...system,
    limits: { ...system.limits, vacuumClean: 1, vacuumAtChange: spread?.vacuum.middle ?? 0 },
  };
  const draws = checkDraws(strict, two, { from: 0, to: 20, seed: 1 });
  const broken = new Set<number>();
  const unknowns = suctionUnknowns(strict);
  for (let at = 0; at < 20; at++) {
    const drawn = withDraw(strict, unknowns.places(drawsOf(unknowns.count, 1)(at)));
    const wanted = check(drawn, two).points.flatMap(({ vacuum, feedPressure, inHand, verdict }) => [
      vacuum.middle,
      feedPressure?.middle,
      inHand.middle,
      verdict === "starves" ? 1 : 0,
    ]);
    const own = draws.slice(8 * at, 8 * at + 8);
    expect([...own]).toEqual(wanted);
    broken.add(own[7] ?? -1);
  }
  expect(broken).toEqual(new Set([0, 1]));
});

test("checkDraws(system, options, slice) has gaps where a draw makes no system, or check cannot say", () => {
  const nan = Number.NaN;
  const impossible = { ...system, spreads: [{ path: ["suction", 0, "bore"], low: -2, high: -1 }] };
  expect([...checkDraws(impossible, {}, { from: 0, to: 1, seed: 1 })]).toEqual([nan, nan, nan, nan]);
  // Far below its cloud point.
  const [, , , verdict] = checkDraws(system, { temperatures: [240] }, { from: 0, to: 1, seed: 1 });
  expect(verdict).toBeNaN();
  const pulse = { ...system, pump: { kind: "pulse", flow: 5e-5, suction: 3e4 } } as const;
  const [vacuum, feed] = checkDraws(pulse, { temperatures: [warm] }, { from: 0, to: 1, seed: 1 });
  expect([Number.isNaN(vacuum), Number.isNaN(feed)]).toEqual([false, true]);
});

test("checkSpreadOf(draws, temperatures) says null of a feed pressure that no draw knows", () => {
  expect(checkSpreadOf(Float64Array.of(1000, Number.NaN, 0.5, 0), 1)[0]?.feedPressure).toBeNull();
});
