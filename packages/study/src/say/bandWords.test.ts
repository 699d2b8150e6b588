import { expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import { bandWords } from "./bandWords.js";

const band = (low: number, middle: number, high: number) => ({ low, middle, high });

test("bandWords(band, kind, units, figure) names each end where they differ, and the one figure where they do not", () => {
  const said = (of: ReturnType<typeof band>) =>
    marked(bandWords(of, "vacuum", "metric", { of: "now", figure: "vacuum" }));
  expect(said(band(2100, 2900, 4000))).toBe("{now: vacuum, low end|2.1} to {now: vacuum, high end|4.0}");
  expect(said(band(2900, 2900, 2900))).toBe("{now: vacuum|2.9}");
});
