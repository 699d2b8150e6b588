// Does the whole make sense against what is known of real fuel and real filters? The inputs were fixed before any answer was
// seen: 9.2 mg/L of delivered dirt (a retail survey), 2 to 6 mg/cm2 of capacity for cellulose (handbooks, from memory), 0.5 m2
// of element, 20 miles a US gallon. Nothing here was tuned to the outcome: a miss is stated as one, with what would have to
// be wrong, and the test fails when a miss goes away unnoticed.
//
// Survey: retail diesel dispensers of a US city, ten stations monthly (ASTM D02.14 presentation, December 2007, as summarised
// at fuelsinstitute.org; seen): 9.2 mg/L by EN 12662; 2 um dispenser filters lasted 2 to 3 months, 10 um ones 6 to 12.
// Changing a light-duty diesel's fuel filters every 5,000 to 15,000 miles: common practice, no source.

import { assumedCapacities } from "@thirstline/core";
import { readSystem, type System } from "@thirstline/spec";
import { life, lifeDraws, spreadOf } from "@thirstline/study";
import { expect, test } from "vitest";
import { read } from "../../support/repository.js";

const MILE = 1609.344; // m, exact
const DRAWS = 1000;

const staged = read("packages/spec/demo/pickup-staged.yaml");
const single = read("packages/spec/demo/pickup-single.yaml");

function systemOf(text: string): System {
  const found = readSystem(text, { file: "a pickup" });
  if ("faults" in found) throw new Error(found.faults.map(({ message }) => message).join("; "));
  return found.system;
}

/** The text with some of its figures changed; each must be there to be changed. */
function changed(text: string, ...changes: readonly (readonly [string, string])[]): string {
  return changes.reduce((all, [from, to]) => {
    if (!all.includes(from)) throw new Error(`"${from}" is not in the file`);
    return all.replace(from, to);
  }, text);
}

/** The pickup's 3 um element as another of its size: permeability goes as the square of the size it is made for. */
function asFineAs(micrometres: number, text = single): string {
  const drop = 3 * (3 / micrometres) ** 2;
  return changed(text, ["size: 3 um", `size: ${micrometres} um`], ["drop: 3 kPa", `drop: ${drop} kPa`]);
}

function hours(text: string): number {
  return (life(systemOf(text)).end?.time ?? Number.POSITIVE_INFINITY) / 3600;
}

/** Chances, in percent, of starving by some distances, and the middle life in miles. */
function starvingBy(text: string, miles: readonly number[]) {
  const system = systemOf(text);
  const { duty } = system;
  if (!duty?.distance) throw new Error("no distance a year");
  const perSecond = duty.distance / (duty.hoursADay * duty.daysAYear * 3600);
  const lives = lifeDraws(system, { from: 0, to: DRAWS, seed: 1 });
  const chances = miles.map((one) => {
    const time = (one * MILE) / perSecond;
    return 100 * spreadOf(lives, { time, atMost: time }).chance;
  });
  const { middle } = spreadOf(lives, null);
  return { chances, middle: (middle * perSecond) / MILE };
}

test("the inputs are the references' own", () => {
  const { deliveredFuel, duty, demand, suction, delivery } = systemOf(staged);
  expect(deliveredFuel?.solids).toBeCloseTo(9.2e-3, 12);
  expect(assumedCapacities.cellulose).toEqual({ least: 0.02, most: 0.06 }); // kg/m2: 2 and 6 mg/cm2
  const elements = [...suction, ...(delivery ?? [])].filter((part) => part.part === "filter");
  expect(elements.map(({ area, make, capacityTest }) => [area, make, capacityTest])).toEqual([
    [0.5, "cellulose", undefined],
    [0.5, "cellulose", undefined],
  ]);
  // 20 miles a US gallon of 231 cubic inches, to the rounding of the file.
  const mean = (duty?.loads ?? []).reduce((sum, { load, share }) => sum + load * share, 0);
  const burnt = "burn" in demand ? demand.burn * mean * (duty?.hoursADay ?? 0) * (duty?.daysAYear ?? 0) * 3600 : 0;
  expect((duty?.distance ?? 0) / MILE / (burnt / (231 * 0.0254 ** 3))).toBeCloseTo(20, 1);
});

test("a pickup with staged 5 and 3 um elements starves about where the trade changes them", () => {
  const { chances, middle } = starvingBy(staged, [5000, 10_000, 15_000]);
  const [by5000 = 0, by10000 = 0, by15000 = 0] = chances;
  expect(by5000).toBeLessThan(5); // 1.6 %
  expect(by10000).toBeGreaterThan(50); // 63 %
  expect(by10000).toBeLessThan(75);
  expect(by15000).toBeGreaterThan(95); // 98 %
  expect(middle).toBeGreaterThan(5000); // 8,640 miles
  expect(middle).toBeLessThan(15_000);
});

test("staging 5 before 3 um buys no life here, since the 5 um element catches nearly all there is", () => {
  const alone = starvingBy(single, [10_000]);
  const both = starvingBy(staged, [10_000]);
  const { elements, cleanliness } = life(systemOf(staged));
  const [first, second] = elements;
  expect((first?.soil ?? 0) / ((first?.soil ?? 0) + (second?.soil ?? 0))).toBeGreaterThan(0.9); // 95 % on the first
  expect(Math.abs(both.middle / alone.middle - 1)).toBeLessThan(0.05); // 8,640 against 8,670 miles
  // What it does buy is cleanliness.
  const codeAlone = life(systemOf(single)).cleanliness.at(-1);
  expect(cleanliness.at(-1)?.counts[0] ?? 1).toBeLessThan(0.1 * (codeAlone?.counts[0] ?? 0));
});

test("a finer element in the same size fills sooner and restricts more", () => {
  const answers = [2, 3, 5, 10].map((size) => life(systemOf(asFineAs(size))));
  const times = answers.map(({ end }) => end?.time ?? 0);
  const drops = answers.map(({ elements }) => elements[0]?.dropClean ?? 0);
  expect(times).toEqual([...times].sort((a, b) => a - b));
  expect(drops).toEqual([...drops].sort((a, b) => b - a));
  expect(new Set(times).size).toBe(4);
});

test("MISS: 10 um elements last only 1.5 times as long as 2 um ones, where the survey has 2 to 6 times", () => {
  // 2 to 3 months against 6 to 12: at least 6/3, at most 12/2 times as long.
  const ratio = hours(asFineAs(10)) / hours(asFineAs(2));
  expect(ratio).toBeCloseTo(1.47, 1); // the direction is right
  expect(ratio).toBeLessThan(2);
  // What would have to be wrong: the dirt's sizes. Medium test dust has most of its mass above 10 um, which both elements
  // catch; the survey's mass "did not correlate with codes". Fine dust moves the ratio the right way, and not far enough:
  const fine = (size: number) => asFineAs(size, changed(single, ["dust: A3 medium", "dust: A2 fine"]));
  const finer = hours(fine(10)) / hours(fine(2));
  expect(finer).toBeGreaterThan(ratio); // 1.51
  expect(finer).toBeLessThan(2);
  // Or the capacities: the handbooks give 2 um and 10 um media of one make the same mass per area; a quarter to three
  // quarters less for the finer would bring the ratio into the survey's band. Throughput and area of the dispensers are not published
  // with it, so the months themselves cannot be held against anything.
});

test("MISS: on petrol the same elements last 2.5 times as long, where five times is expected", () => {
  const petrol = changed(single, [
    "kind: diesel, grade: winter, cloud point: -12 degC, CFPP: -22 degC",
    "kind: petrol, class: EN 228 A, ethanol: 0 %",
  ]);
  const ratio = hours(petrol) / hours(single);
  expect(ratio).toBeCloseTo(2.5, 1); // thin fuel leaves more room for soil
  expect(ratio).toBeLessThan(5);
  // What would have to be wrong: that petrol comes as dirty as diesel. No figure for petrol was found; at half the dirt the
  // ratio is met, since life goes as one over it.
  const cleaner = changed(petrol, ["solids: 9.2 mg/L", "solids: 4.6 mg/L"]);
  expect(hours(cleaner) / hours(single)).toBeGreaterThan(5);
});
