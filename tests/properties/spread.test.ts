import { readSystem, type System } from "@thirstline/spec";
import { checkDraws, checkSpreadOf, life, lifeDraws, spreadOf } from "@thirstline/study";
import fc from "fast-check";
import { expect, test } from "vitest";
import { read } from "../support/repository.js";

const lorry = read("packages/spec/demo/lorry.yaml");

function systemOf(text: string): System {
  const found = readSystem(text, { file: "a lorry" });
  if ("faults" in found) throw new Error(found.faults.map(({ message }) => message).join("; "));
  return found.system;
}

/** The lorry with its dirt spread so far about 2 mg/L, and nothing else uncertain: betas at two sizes, capacities as they are. */
function spreadBy(percent: number): System {
  const text = lorry
    .replace("solids: 1 to 3 mg/L", percent === 0 ? "solids: 2 mg/L" : `solids: 2 mg/L ± ${percent} %`)
    .replaceAll(" g ± 20 %", " g")
    .replace("betas: [{ size: 4 um, beta: 75 }]", "betas: [{ size: 4 um, beta: 75 }, { size: 10 um, beta: 1000 }]");
  return systemOf(text);
}

const system = systemOf(lorry);
const INTERVAL = { time: system.service?.interval ?? 0, atMost: system.service?.interval ?? 0 };

test("lifeDraws(system, slice) is the same to the bit each time, and otherwise for another seed", () => {
  const slice = { from: 0, to: 60, seed: 5 };
  expect(lifeDraws(system, slice)).toEqual(lifeDraws(system, slice));
  expect(lifeDraws(system, { ...slice, seed: 6 })).not.toEqual(lifeDraws(system, slice));
});

test("lifeDraws(system, slice) of slices put together is that of the whole, to the bit", () => {
  const whole = lifeDraws(system, { from: 0, to: 40, seed: 2 });
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 39 }), (cut) => {
      const pieces = [
        lifeDraws(system, { from: 0, to: cut, seed: 2 }),
        lifeDraws(system, { from: cut, to: 40, seed: 2 }),
      ];
      expect(Float64Array.from(pieces.flatMap((piece) => [...piece]))).toEqual(whole);
    }),
    { numRuns: 6 },
  );
});

test("lifeDraws(system, slice) with a spread of no width is the life itself, every time", () => {
  const sure = spreadBy(0);
  const solids = sure.deliveredFuel?.solids ?? Number.NaN;
  const narrow: System = { ...sure, spreads: [{ path: ["deliveredFuel", "solids"], low: solids, high: solids }] };
  const end = life(sure).end?.time ?? Number.NaN;
  for (const drawn of lifeDraws(narrow, { from: 0, to: 20, seed: 1 }))
    expect(Math.abs(drawn / end - 1)).toBeLessThan(1e-9);
});

test("lifeDraws(system, slice) moves by less than 1e-9 when every figure of the fuel is off by rounding", () => {
  const off: System = {
    ...system,
    temperature: system.temperature * (1 + 4e-16),
    altitude: system.altitude * (1 - 4e-16),
  };
  const lives = lifeDraws(system, { from: 0, to: 30, seed: 4 });
  lifeDraws(off, { from: 0, to: 30, seed: 4 }).forEach((life, at) => {
    expect(Math.abs(life / (lives[at] ?? 0) - 1)).toBeLessThan(1e-9);
  });
});

test("spreadOf(lives) is no narrower for a wider spread", () => {
  const widths = [5, 10, 20, 40, 60].map((percent) => {
    const { low, high } = spreadOf(lifeDraws(spreadBy(percent), { from: 0, to: 200, seed: 3 }), null);
    return high - low;
  });
  expect(widths).toEqual([...widths].sort((a, b) => a - b));
  expect(widths[0]).toBeGreaterThan(0);
});

test("spreadOf(lives) puts low under middle under high, and a chance between 0 and 1", () => {
  const { low, middle, high, chance, draws } = spreadOf(lifeDraws(system, { from: 0, to: 200, seed: 1 }), INTERVAL);
  expect(low).toBeLessThan(middle);
  expect(middle).toBeLessThan(high);
  expect(chance).toBeGreaterThan(0);
  expect(chance).toBeLessThan(1);
  expect(draws).toBe(200);
});

test("spreadOf(lives) is surer of its chance with more draws", () => {
  const errors = [100, 1600].map(
    (draws) => spreadOf(lifeDraws(system, { from: 0, to: draws, seed: 1 }), INTERVAL).chanceError,
  );
  const [few = 0, many = 0] = errors;
  expect(many).toBeGreaterThan(0);
  // Plain random draws would bring it down fourfold; even ones do better, and sets of ten scatter by a quarter.
  expect(many).toBeLessThan(few / 2);
});

test("spreadOf(lives) gives a chance within three standard errors of that of many more draws", () => {
  const lives = lifeDraws(system, { from: 0, to: 3000, seed: 9 });
  const long = spreadOf(lives, INTERVAL);
  for (const seed of [1, 2, 3, 4]) {
    const { chance, chanceError } = spreadOf(lifeDraws(system, { from: 0, to: 300, seed }), INTERVAL);
    expect(Math.abs(chance - long.chance)).toBeLessThan(3 * Math.hypot(chanceError, long.chanceError) + 1 / 300);
  }
});

test("spreadOf(lives) leaves draws out that make no system, and counts the others", () => {
  const lives = Float64Array.from({ length: 50 }, (_, at) => (at % 5 === 0 ? Number.NaN : 100 + at));
  const { draws, low, chance } = spreadOf(lives, { time: 1000, atMost: 1000 });
  expect([draws, low > 0, chance]).toEqual([40, true, 1]);
});

test("checkDraws(system, options, slice) draws what bears on pressures: wider hose, less vacuum", () => {
  const hose = systemOf(lorry.replace("length: 1.8 m, bore: 12.7 mm", "length: 1.8 m, bore: 6 mm ± 10 %"));
  const [spread] = checkSpreadOf(checkDraws(hose, {}, { from: 0, to: 200, seed: 1 }), 1);
  expect(spread?.vacuum.low).toBeLessThan(spread?.vacuum.middle ?? 0);
  expect(spread?.vacuum.middle).toBeLessThan(spread?.vacuum.high ?? 0);
  expect(spread?.draws).toBe(200);
});
