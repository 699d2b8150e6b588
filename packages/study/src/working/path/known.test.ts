import { expect, test } from "vitest";
import type { Step } from "../Step.js";
import { known } from "./known.js";
import { once } from "./once.js";

const step = (value: number): Step => ({
  name: "cost",
  value,
  unit: "Pa",
  kind: "pressure",
  origin: { by: "words", words: "put in", from: [] },
});

test("known(costs) is every cost of a stretch, in order; null where one is not known, or there is none", () => {
  const [one, other] = [step(1), step(2)];
  expect(known([() => one, () => other])).toEqual([one, other]);
  expect(known([() => one, () => null])).toBeNull();
  expect(known([() => null])).toBeNull();
  expect(known([])).toBeNull();
});

test("once(make) makes when first asked, and never again, be it null", () => {
  let made = 0;
  const nothing = once(() => {
    made += 1;
    return null;
  });
  expect(made).toBe(0);
  expect([nothing(), nothing()]).toEqual([null, null]);
  expect(made).toBe(1);
});
