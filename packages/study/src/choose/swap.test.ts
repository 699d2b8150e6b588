import type { CatalogueElement, System } from "@thirstline/spec/system";
import { describe, expect, test } from "vitest";
import { elementOf, plainSystem, WARM } from "../../../../tests/support/plainSystem.js";
import { check } from "../check/check.js";
import { life } from "../life/life.js";
import { asFitted, type SwapOptions, swap } from "./swap.js";

const HOUR = 3600;
const HEAD = 830 * 9.80665;
const COLD = 268.15;
const at = "fitted";
const quick: SwapOptions = { draws: 0 };
const other = elementOf("other", { drop: 2e3 });
const run = (options: SwapOptions = {}, element: CatalogueElement = other, system: System = plainSystem) =>
  swap(system, { at, with: element }, { ...quick, ...options });
const codes = ({ reasons }: ReturnType<typeof swap>) => reasons.map(({ weight, code }) => `${weight}: ${code}`);
const { betas: _, ...blind } = other.filter;
const unknown = { ...other, filter: blind };

describe("swap(system, given, options)", () => {
  test("tells what is swapped for what, and what is asked for", () => {
    const { reasons: _reasons, now: _now, changed: _changed, ...rest } = run();
    expect(rest).toEqual({
      question: "swap",
      system: "plain",
      pump: "fixed",
      at: ["fitted"],
      with: "other",
      verdict: "yes",
      fineness: "same",
      asked: "20/18/15",
      interval: { time: 100 * HOUR, source: null },
      broken: [],
    });
    const sourced = { ...plainSystem, service: { interval: 1, source: "manual" } };
    expect(run({}, other, sourced).interval).toEqual({ time: 1, source: "manual" });
    const { protection: _p, service: _s, ...open } = plainSystem;
    expect(run({}, other, open)).toMatchObject({ asked: null, interval: null });
  });

  test("puts reasons that decide first", () => {
    const heavy = { ...unknown, filter: { ...blind, style: "spin-on", reversed: false } } as CatalogueElement;
    const system = {
      ...plainSystem,
      suction: plainSystem.suction.map((part) =>
        part.part === "filter" ? { ...part, style: "cartridge" as const } : part,
      ),
    };
    const answer = run(
      { rating: { beta: 75, size: 10e-6 } },
      { ...heavy, filter: { ...heavy.filter, medium: elementOf("x", { drop: 20e3 }).filter.medium } },
      system,
    );
    const weights = answer.reasons.map(({ weight }) => weight);
    const order = ["no", "cannot say", "care", "note"];
    expect(weights).toEqual([...weights].sort((one, two) => order.indexOf(one) - order.indexOf(two)));
    expect(new Set(weights).size).toBe(4);
    expect(answer.verdict).toBe("no");
  });

  test("judges by the heaviest reason", () => {
    expect(run({}, unknown).verdict).toBe("cannot say");
    expect(run({}, elementOf("tight", { drop: 14e3 })).verdict).toBe("with care");
    expect(run({}, elementOf("starving", { drop: 25e3 }))).toMatchObject({
      verdict: "no",
      broken: ["vacuum at change"],
    });
  });

  test("goes by the fineness asked only where one is", () => {
    expect(codes(run())).toEqual(["note: protection kept", "note: lasts", "note: thread not known"]);
    const coarse = elementOf("coarse", { drop: 2e3, filter: { betas: [{ size: 30e-6, beta: 75 }] } });
    const rating = { beta: 1000, size: 2e-6 };
    expect(codes(run({ rating }))).toEqual(codes(run()));
    expect(codes(run({ rating: { beta: 1000, size: 1.5e-6 } }, coarse))).toContain("no: rating not met");
  });

  test("takes several places of one element, each once", () => {
    const pair: System = {
      ...plainSystem,
      suction: [...plainSystem.suction, elementOf("second", { drop: 1e3 }).filter],
    };
    const answer = swap(pair, { at: ["fitted", "second", "fitted"], with: other }, quick);
    expect(answer.at).toEqual(["fitted", "second"]);
    expect(answer.changed.warm.vacuum.middle - HEAD).toBeCloseTo(4e3, 3);
    expect(answer.now.warm.vacuum.middle - HEAD).toBeCloseTo(2e3, 3);
  });

  test("draws lives where asked to, or takes those drawn beforehand", () => {
    const lives = { now: Float64Array.of(1e9, 1e9), changed: Float64Array.of(HOUR, 1e9) };
    const drawn = run({ lives });
    expect(drawn.now.spread).toMatchObject({ chance: 0, draws: 2 });
    expect(drawn.changed.spread).toMatchObject({ chance: 0.5, draws: 2 });
    expect(codes(drawn)).toContain("care: may starve early");
    expect(run().changed.spread).toBeNull();
    expect(swap(plainSystem, { at, with: other }, { draws: 3 }).changed.spread).toMatchObject({ draws: 3, chance: 0 });
    expect(swap(plainSystem, { at, with: other }).now.spread?.draws).toBe(200);
  });

  test("refuses what is no place, no draws and no temperature", () => {
    const pair = { ...plainSystem, suction: [...plainSystem.suction, elementOf("second", { drop: 1e3 }).filter] };
    const words = 'swap requires at to be a filter of plain, one of "fitted", "second", got "third"';
    expect(() => swap(pair, { at: "third", with: other })).toThrow(words);
    expect(() => asFitted(pair, "third")).toThrow(words);
    expect(() => swap(pair, { at: [], with: other })).toThrow("swap requires at to be one place or more, got 0");
    for (const draws of [-1, 1.5, Number.NaN]) {
      expect(() => run({ draws })).toThrow(`swap requires draws to be a whole number from 0, got ${draws}`);
    }
    expect(() => run({ temperatures: [] })).toThrow("swap requires temperatures to be one or more, got 0");
  });
});

test("asFitted(system, name) is what is fitted, to be put in again", () => {
  const again = swap(plainSystem, { at, with: asFitted(plainSystem, "fitted") }, quick);
  expect(again.verdict).toBe("yes");
  expect(again.changed).toEqual({ ...again.now, element: "fitted" });
});

describe("swap(system, given, options).now and .changed", () => {
  test("are named by the catalogue's element, or by the place where none is known to be fitted", () => {
    expect([run().now.element, run().changed.element]).toEqual(["fitted", "other"]);
    expect(run({ fitted: elementOf("known", { drop: 1e3 }) }).now.element).toBe("known");
  });

  test("are at the warmest and the coldest, in whatever order those are named", () => {
    for (const temperatures of [
      [WARM, COLD, 278.15],
      [COLD, 278.15, WARM],
    ]) {
      const { now, changed } = run({ temperatures });
      expect([now.warm.temperature, now.cold.temperature]).toEqual([WARM, COLD]);
      expect([changed.warm.temperature, changed.cold.temperature]).toEqual([WARM, COLD]);
      expect(changed.warm.vacuum.middle).toBeCloseTo(HEAD + 2e3, 3);
      expect(changed.cold.vacuum.middle).toBeGreaterThan(changed.warm.vacuum.middle);
    }
  });

  test("have code, life and change as the life of that system has them", () => {
    const found = life(plainSystem);
    expect(run().now).toMatchObject({
      code: found.cleanliness.at(-1)?.code,
      life: found.end?.time,
      change: found.change,
      lifeKnown: true,
      lifeReasons: [],
      captureKnown: true,
      fillingUnknown: null,
    });
    const { duty: _duty, ...idle } = plainSystem;
    expect(run({ lives: { now: Float64Array.of(1), changed: Float64Array.of(1) } }, other, idle).now).toMatchObject({
      lifeKnown: false,
      lifeReasons: [{ code: "no duty" }],
      life: null,
      change: null,
      spread: null,
      inHandAtChange: null,
      code: null,
    });
  });

  test("have what is in hand once the elements have filled for the interval, at the coldest", () => {
    // 200 g on it in 100 h: 12 kPa for 600 g make 4 kPa of them, and 8 it has when clean.
    const { changed, now } = run({}, elementOf("eight", { drop: 8e3 }));
    expect(changed.inHandAtChange).toBeGreaterThan((30e3 - HEAD) / 12e3 - 1);
    expect(changed.inHandAtChange).toBeLessThan(((30e3 - HEAD) / 12e3) * 1.01 - 1);
    // What is fitted has so much that the pump's 400 L/h come first.
    expect(now.inHandAtChange).toBeCloseTo(1, 9);
    const cold = run({ temperatures: [283.15, WARM] }, elementOf("eight", { drop: 8e3 })).changed;
    expect(cold.inHandAtChange).toBeLessThan(changed.inHandAtChange ?? 0);
    expect(cold.inHandAtChange).toBeGreaterThan(0);
  });

  test("have none of that where a limit comes first, or no interval is stated", () => {
    expect(run({}, elementOf("slow", { drop: 18e3 })).changed).toMatchObject({ inHandAtChange: null, lifeKnown: true });
    const { service: _service, ...open } = plainSystem;
    expect(run({}, other, open).changed).toMatchObject({ inHandAtChange: null, lifeKnown: true });
  });

  test("say of an element whose catch or capacity is not known that it is, and of those elsewhere only of the catch", () => {
    const { capacityTest: _c, loadingLaw: _l, ...untested } = other.filter;
    const bare = { ...other, filter: untested };
    // Another element fills, so that there is a life at all.
    const beside = { ...plainSystem, delivery: [elementOf("behind", { drop: 1e3 }).filter] };
    expect(run({}, unknown, beside).changed).toMatchObject({ captureKnown: false, fillingUnknown: "catch" });
    expect(run({}, bare, beside).changed).toMatchObject({ captureKnown: true, fillingUnknown: "capacity" });
    const misfit = elementOf("misfit", { drop: 2e3, filter: { loadingLaw: "cake-complete" } });
    expect(run({}, misfit, beside).changed.fillingUnknown).toBe("capacity");
    // All of its drop grows with the square of the flow: soil has nothing to multiply.
    const points = [1, 2].map((times) => ({ drop: times ** 2 * 1e3, flow: (times * 200e-3) / 3600 }));
    const open = elementOf("open", { drop: 1e3, filter: { medium: { ...other.filter.medium, points } as never } });
    expect(run({}, open, beside).changed.fillingUnknown).toBe("capacity");
    const { betas: _b, ...blindBehind } = elementOf("behind", { drop: 1e3 }).filter;
    expect(run({}, other, { ...plainSystem, delivery: [blindBehind] }).changed).toMatchObject({
      captureKnown: false,
      fillingUnknown: null,
    });
  });

  test("have the chance of starving early in their yearly cost, where an interval is stated", () => {
    const lives = { now: Float64Array.of(1e9, 1e9), changed: Float64Array.of(HOUR, 1e9) };
    const priced = { ...other, price: 10 };
    const { changed } = run({ lives, stoppage: 500 }, priced);
    expect(changed.cost).toMatchObject({ changes: 10, elements: 100, stoppages: 2500, total: 2600 });
    const { service: _service, ...open } = plainSystem;
    expect(run({ lives, stoppage: 500 }, priced, open).changed.cost.stoppages).toBeNull();
    expect(run({ stoppage: 500 }, priced).changed.cost.stoppages).toBeNull();
  });

  test("have the chance for the longest interval allowed too, where that is longer", () => {
    const service = { interval: 100 * HOUR, atMost: 200 * HOUR };
    const lives = { now: Float64Array.of(150 * HOUR, 1e9), changed: Float64Array.of(1e9, 1e9) };
    expect(run({ lives }, other, { ...plainSystem, service }).now.spread?.atMost).toMatchObject({ chance: 0.5 });
    expect(run({ lives }).now.spread?.atMost).toBeNull();
  });

  test("have the elements as the file has them at the other places", () => {
    const soiled = {
      ...plainSystem,
      delivery: [elementOf("behind", { drop: 1e3, filter: { restriction: 3 } }).filter],
    };
    const { changed } = run({}, other, soiled);
    expect(changed.warm.feedPressure?.middle).toBeCloseTo(
      check({ ...soiled, suction: [...plainSystem.suction.slice(0, 1), other.filter] }).points[0]?.feedPressure
        ?.middle ?? 0,
      6,
    );
  });
});
