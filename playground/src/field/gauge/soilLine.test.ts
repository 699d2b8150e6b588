import { expect, test } from "vitest";
import { type SoilKnown, soilLine } from "./soilLine.js";

const laws = [{ law: "cake", mix: null, weight: 1 }] as const;
const known: SoilKnown = {
  start: 1,
  now: 400,
  ratio: { low: 2, middle: 2.5, high: 3 },
  end: { time: { low: 600, middle: 800, high: 1200 }, ratio: 4 },
};

test("soilLine(laws, known) goes through what is known of the beginning, of now and of the limit", () => {
  const line = soilLine({ laws }, known);
  const near = (time: number, values: number[]) => {
    const { low, middle, high } = line?.(time) ?? { low: 0, middle: 0, high: 0 };
    for (const [at, value] of [low, middle, high].entries()) expect(value).toBeCloseTo(values[at] ?? 0, 2);
  };
  near(0, [1, 1, 1]);
  near(400, [2, 2.5, 3]);
  expect(line?.(600).high).toBeCloseTo(4, 2);
  expect(line?.(800).middle).toBeCloseTo(4, 2);
  expect(line?.(1200).low).toBeCloseTo(4, 2);
});

test("soilLine(laws, known) stays as it is where no end is told, and is none without a law", () => {
  expect(soilLine({ laws }, { ...known, end: null })?.(900).middle).toBeCloseTo(2.5, 2);
  expect(soilLine({ laws: [] }, known)).toBeNull();
});
