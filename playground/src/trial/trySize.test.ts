import type { SystemFilter } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demo } from "../file/demos.test-support.js";
import { partsIn } from "../model/parts.js";
import { ratedSize, sizeRange } from "./ratedSize.js";
import { trySize } from "./trySize.js";

function filterOf(file: string, name: string): SystemFilter {
  const found = partsIn(demo(file)).find((part) => part.name === name);
  if (found?.part !== "filter") throw new Error(`no filter ${name}`);
  return found;
}

const prefilter = filterOf("heron.yaml", "prefilter A");

test("trySize(filter, half its size) quadruples the drop of its flow test, and halves the sizes of its betas", () => {
  const finer = trySize(prefilter, 12.5e-6);
  expect(finer.medium).toMatchObject({ points: [{ drop: 8000 }] });
  expect(finer.betas?.map(({ size }) => size)).toEqual([5e-6, 12.5e-6]);
  expect(finer.tried).toMatchObject({ size: 25e-6, medium: prefilter.medium });
});

test("trySize(trySize(filter, size), its own size) is the filter as stated, whatever was tried between", () => {
  expect(trySize(trySize(trySize(prefilter, 7e-6), 40e-6), 25e-6)).toEqual(prefilter);
});

test("trySize(filter, size) leaves what grows with the square of the flow in a test of two points", () => {
  const points = [
    { flow: 1, drop: 10 + 2 },
    { flow: 2, drop: 20 + 8 },
  ];
  const tested: SystemFilter = {
    ...prefilter,
    medium: { by: "flow test", points, dynamicViscosity: 1e-3, density: 800 },
  };
  const finer = trySize(tested, 12.5e-6);
  expect(finer.medium).toMatchObject({ points: [{ drop: 42 }, { drop: 88 }] });
});

test("trySize(filter, size) of a medium estimated from its rating is estimated anew, and is no more assumed than before", () => {
  const { betas: _, ...bare } = prefilter;
  const medium = { by: "rating", size: 10e-6, kind: "beta 75", area: 1, thickness: 6e-4 } as const;
  expect(trySize({ ...bare, medium }, 5e-6)).toEqual({ ...bare, medium: { ...medium, size: 5e-6 } });
});

test("sizeRange(filter) keeps every beta where a file takes it", () => {
  expect(ratedSize(prefilter)).toBe(25e-6);
  const { least, most } = sizeRange(prefilter);
  expect(least).toBeCloseTo(2.5e-6, 12);
  expect(most).toBeCloseTo(100e-6, 12);
});
