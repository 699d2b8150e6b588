import type { LifeEnd } from "@thirstline/core";
import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { EVENLY, METRE, oneGauge, plainReadings } from "../../../../../tests/support/gaugeScenes.js";
import { litresAnHour, plainSystem } from "../../../../../tests/support/plainSystem.js";
import { onePut, stepsIn, told } from "../../../../../tests/support/steps.js";
import { roomMap } from "../../gauge/elementsNow.js";
import { proofOf } from "../proof.js";
import type { Step } from "../Step.js";
import { type LimitsGiven, metStep, metTemperature } from "./limitSteps.js";

const few = plainReadings(EVENLY.slice(0, 4));
const demand = (value: number): Step => ({
  name: "f",
  value,
  unit: "1",
  kind: "plain",
  origin: { by: "file", path: "x" },
});

/** Limits of the plain pump, 30 kPa of vacuum at change; its metre costs 8.14 kPa and its element 1 kPa clean. */
function limitsOf(system: System = plainSystem): LimitsGiven {
  const { given, fits } = oneGauge({ system, readings: few });
  const map = roomMap(fits.facts, "suction");
  if (!map) throw new Error("no limit");
  return { given, map, restrictions: fits.facts.suction.at };
}

test("metStep(limits, f) is where the vacuum comes to its limit, by hand to a hundredth of the table's stretch", () => {
  const limits = limitsOf();
  for (const f of [0.85, 1, 1.07, 1.3]) {
    const met = metStep(limits, demand(f));
    expect(met?.value, String(f)).toBeCloseTo(limits.map.at(f).ratio, 9);
    // 1 kPa at full load, in proportion to the demand. A stretch of the table is 9 to 25 wide, and halved seven times.
    expect(Math.abs((met?.value ?? 0) - (30e3 - METRE) / 1e3 / f), String(f)).toBeLessThan(0.4);
  }
});

test("metStep(limits, f) tells the demands it lies between, and what holds on either side of each", () => {
  const limits = limitsOf();
  const [left, right] = limits.map.around(1.02);
  const met = metStep(limits, demand(1.02));
  const ends = ["a", "b"].map((letter) => onePut(met, letter));
  expect(ends).toEqual(
    [left.demand, right.demand].map((value) => ({
      name: "demand at which limits are worked out",
      value,
      unit: "1",
      kind: "plain",
      origin: { by: "source", source: "common practice, no source" },
    })),
  );
  const r = onePut(met, "r");
  expect([r.name, r.value, r.unit]).toEqual([
    `resistance over clean where the limit "vacuum at change" is met at ${left.demand} times the demand, 15 °C`,
    left.first.ratio,
    "1",
  ]);
  expect(onePut(met, "s").value).toBe(right.first.ratio);
  if (r.origin.by !== "search") throw new Error("no search");
  expect(r.origin.words).toBe(
    "closed in on by halving, seven times, between two resistances of the model's table; the middle of what is left",
  );
  const [low, high] = left.first.between.map((one) => Number(one.toPrecision(6)));
  expect(r.origin.checks.map(({ words, relation, right: limit }) => [words, relation, limit.value])).toEqual([
    [`with ${low} times clean it still holds`, "<=", 30e3],
    [`with ${high} times clean it holds no more`, ">=", 30e3],
  ]);
  // The same node of the same limits is told once.
  expect(onePut(metStep(limits, demand(1.02)), "r")).toBe(r);
});

test("metStep(limits, f) proves itself down to the file, units and all", () => {
  const step = metStep(limitsOf(), demand(1.02));
  expect(step && proofOf({ step }).misses).toEqual([]);
});

test("metStep(limits, f) leads each side back to the demand, the temperature and the elements as they have filled", () => {
  const limits = limitsOf();
  const r = onePut(metStep(limits, demand(1.02)), "r");
  const sides = r.origin.by === "search" ? r.origin.checks.map(({ left }) => left) : [];
  const said = sides.flatMap(stepsIn).map(told);
  const saidOf = (name: string) =>
    new Map(said.map(([own, , unit, kind, from]) => [own, [unit, kind, from]])).get(name);
  expect(saidOf("demand over the file's")).toEqual(["1", "plain", "put in here"]);
  expect(saidOf("resistance over clean of fitted")).toEqual([
    "1",
    "plain",
    "as they have filled when the element that goes first is so far",
  ]);
});

test("metStep(limits, f) of a limit that clean elements break says so", () => {
  const limits = limitsOf({ ...plainSystem, limits: { vacuumClean: 5e3, vacuumAtChange: 6e3 } });
  const met = metStep(limits, demand(1));
  expect(met?.value).toBe(1);
  const r = onePut(met, "r");
  if (r.origin.by !== "search") throw new Error("no search");
  expect(r.origin.words).toBe("it does not hold with clean elements");
  expect(r.origin.checks.map(({ words, relation }) => [words, relation])).toEqual([
    ["with 1 times clean it holds no more", ">="],
  ]);
});

test("metStep(limits, f) of a terminal drop names its element", () => {
  const system: System = {
    ...plainSystem,
    suction: plainSystem.suction.map((part) => (part.part === "filter" ? { ...part, terminalDrop: 5e3 } : part)),
  };
  const met = metStep(limitsOf(system), demand(1));
  expect(onePut(met, "r").name).toMatch(
    /^resistance over clean where the terminal drop of fitted is met at \d[\d.]* times the demand, 15 °C$/,
  );
  // Its clean drop is 1 kPa at full load.
  expect(met?.value).toBeCloseTo(5, 0);
});

/** Where limits are met by hand: nothing at the lesser demand, so much at the larger. */
function byHand(left: number, right: number, at: number): LimitsGiven {
  const limits = limitsOf();
  const by: LifeEnd = { kind: "limit", limit: "vacuum at change" };
  const end = (ratio: number, factor: number) => {
    const first = { ratio, between: [ratio, ratio] as const, by, temperature: 288.15 };
    return { demand: factor, first, all: [first] };
  };
  const around = [end(left, 0.9), end(right, 1.1)] as const;
  const near = at < 1 ? around[0] : around[1];
  return { ...limits, map: { around: () => around, at: () => near.first } as unknown as LimitsGiven["map"] };
}

test("metStep(limits, f) between a demand that meets no limit and one that does is told of the nearer one", () => {
  expect(metStep(byHand(Infinity, 20, 0.95), demand(0.95))).toBeNull();
  expect(metStep(byHand(Infinity, 20, 1.05), demand(1.05))?.value).toBe(20);
  expect(metStep(byHand(30, Infinity, 0.95), demand(0.95))?.value).toBe(30);
  expect(metStep(byHand(30, Infinity, 1.05), demand(1.05))).toBeNull();
  expect(metStep(byHand(Infinity, Infinity, 1), demand(1))).toBeNull();
});

test("metTemperature(limits, f) is chosen from the duty: no other limit and season needs less soil", () => {
  const seasons: System = {
    ...plainSystem,
    fuel: { kind: "diesel", grade: "winter", cloudPoint: 257.15 } as System["fuel"],
    duty: {
      hoursADay: 4,
      daysAYear: 250,
      loads: [{ load: 1, share: 1 }],
      seasons: [
        { name: "warm", share: 0.5, temperature: 293.15 },
        { name: "cold", share: 0.5, temperature: 270.65 },
      ],
    },
  };
  const limits = limitsOf(seasons);
  const step = metTemperature(limits, demand(1.02));
  const [left, right] = limits.map.around(1.02);
  expect([step.name, step.value, step.unit, step.kind]).toEqual(["temperature", 270.65, "K", "temperature"]);
  if (step.origin.by !== "search") throw new Error("no search");
  expect(step.origin.words).toBe("chosen from the temperatures of the duty: the least soil meets a limit there");
  const near = 1.02 - left.demand < right.demand - 1.02 ? left : right;
  const { checks } = step.origin;
  const all = ['limit "vapour"', 'limit "feed pressure"', 'limit "vacuum at change"'];
  const places = ["-2.5", "15", "20"].flatMap((celsius) => all.map((limit) => `the ${limit} at ${celsius} °C`));
  // The one that is met first is not held against itself.
  const others = places.filter((one) => one !== 'the limit "vacuum at change" at -2.5 °C');
  expect(checks.map(({ words }) => words).sort()).toEqual(
    others.map((one) => `no more soil is needed than for ${one}`).sort(),
  );
  for (const { left: own, relation, right: other } of checks) {
    expect([own.value, relation]).toEqual([near.first.ratio, "<="]);
    expect(other.value).toBeGreaterThan(near.first.ratio);
    expect(Number.isFinite(other.value)).toBe(true);
  }
});

test("metTemperature(limits, f) is held against what is met at the nearer of the two demands", () => {
  const system: System = {
    ...plainSystem,
    duty: {
      hoursADay: 4,
      daysAYear: 250,
      loads: [{ load: 1, share: 1 }],
      seasons: [{ name: "all", share: 1, temperature: 288.15 }],
    },
  };
  const limits = limitsOf(system);
  for (const part of [0.1, 0.45, 0.55, 0.9]) {
    const [left, right] = limits.map.around(1.02);
    const step = metTemperature(limits, demand(left.demand + part * (right.demand - left.demand)));
    const near = part < 0.5 ? left : right;
    const own = step.origin.by === "search" ? step.origin.checks.map((check) => check.left.value) : [];
    expect(new Set(own), String(part)).toEqual(new Set([near.first.ratio]));
  }
});

test("metStep(limits, f) asks the model with the demand and the temperature of the duty", () => {
  const diesel: System = {
    ...plainSystem,
    fuel: { kind: "diesel", grade: "winter", cloudPoint: 257.15 } as System["fuel"],
    demand: { power: 50e3, specificConsumption: 6e-8, return: 100 * litresAnHour },
    duty: {
      hoursADay: 4,
      daysAYear: 250,
      loads: [{ load: 1, share: 1 }],
      seasons: [{ name: "cold", share: 1, temperature: 270.65 }],
    },
  };
  const limits = limitsOf(diesel);
  const r = onePut(metStep(limits, demand(1.02)), "r");
  const [left] = r.origin.by === "search" ? r.origin.checks.map((check) => check.left) : [];
  const temperatures = stepsIn(left).filter(({ kind }) => kind === "temperature");
  expect(temperatures.map(told)).toContainEqual(["temperature", 270.65, "K", "temperature", "of the duty"]);
  // That of the file has no say.
  expect(temperatures.filter(({ origin }) => origin.by === "file")).toEqual([]);
});
