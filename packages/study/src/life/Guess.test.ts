import type { SystemFilter } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { areaOf, assumedMakeOf, oneBetaOf } from "./Guess.js";

const filter = (more: object) => ({ medium: { by: "flow test", points: [] }, ...more }) as unknown as SystemFilter;
const rating = { kind: "beta 75", size: 10e-6 };

test("oneBetaOf(filter) names the one beta that its capture is known by", () => {
  expect(oneBetaOf(filter({ betas: [{ beta: 75, size: 10e-6 }] }))).toBe("75 at 0.00001");
  expect(oneBetaOf(filter({ statedRating: rating }))).toBe("beta 75 at 0.00001");
  expect(oneBetaOf(filter({ medium: { by: "rating", ...rating } }))).toBe("beta 75 at 0.00001");
});

test("oneBetaOf(filter) is null where several betas tell, or none", () => {
  expect(oneBetaOf(filter({ betas: [rating, rating], statedRating: rating }))).toBeNull();
  expect(oneBetaOf(filter({ betas: [], statedRating: rating }))).toBeNull();
  expect(oneBetaOf(filter({ statedRating: { kind: "nominal", size: 10e-6 } }))).toBeNull();
  expect(oneBetaOf(filter({}))).toBeNull();
});

test("assumedMakeOf(filter) is what it is made of, cellulose where not stated, if nothing was tested and its area is known", () => {
  expect(assumedMakeOf(filter({ area: 0.5, make: "glass" }))).toBe("glass");
  expect(assumedMakeOf(filter({ area: 0.5 }))).toBe("cellulose");
  expect(assumedMakeOf(filter({ medium: { by: "rating", area: 0.5 } }))).toBe("cellulose");
  expect(assumedMakeOf(filter({ make: "glass" }))).toBeNull();
  expect(assumedMakeOf(filter({ area: 0.5, capacityTest: {} }))).toBeNull();
  expect(assumedMakeOf(filter({ area: 0.5, lighterCapacityTest: {} }))).toBeNull();
});

test("areaOf(filter) is the filter's own before its medium's", () => {
  expect(areaOf(filter({ area: 0.5, medium: { by: "rating", area: 0.3 } }))).toBe(0.5);
  expect(areaOf(filter({ medium: { by: "rating", area: 0.3 } }))).toBe(0.3);
  expect(areaOf(filter({}))).toBeUndefined();
});
