import { expect, test } from "vitest";
import { primingStrokes } from "./primingStrokes.js";

test("primingStrokes(given) is the example", () => {
  expect(primingStrokes({ volume: 6e-4, stroke: 5e-6, fill: 0.8 })).toBe(150);
});

test("primingStrokes(given) counts a part of a stroke as one, and no air as none", () => {
  expect(primingStrokes({ volume: 1e-6, stroke: 12e-6, fill: 0.8 })).toBe(1);
  expect(primingStrokes({ volume: 0, stroke: 12e-6, fill: 0.8 })).toBe(0);
});

test("primingStrokes(given) refuses what is no volume, stroke or fill, and names it", () => {
  const good = { volume: 6e-4, stroke: 5e-6, fill: 0.8 };
  expect(() => primingStrokes({ ...good, volume: Number.NaN })).toThrow(
    "primingStrokes requires volume to be at least 0 m3, got NaN",
  );
  expect(() => primingStrokes({ ...good, stroke: 0 })).toThrow("stroke to be more than 0 m3, got 0");
  expect(() => primingStrokes({ ...good, fill: 1.2 })).toThrow("fill to be more than 0 and at most 1, got 1.2");
});
