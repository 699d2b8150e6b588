import {
  type CleanlinessCode,
  type CodePart,
  codeOf,
  convertSize,
  countsOf,
  dirtierThan,
  parseCode,
  printCode,
  type ScaleNumber,
} from "@thirstline/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { between, someCounts } from "./some.js";

const rank = (scale: ScaleNumber) => (scale === ">28" ? 29 : (scale as number));

const somePart: fc.Arbitrary<CodePart> = fc.oneof(
  fc.record({ scale: fc.integer({ min: 0, max: 28 }), fewCounted: fc.boolean() }),
  fc.constantFrom<CodePart>(
    { scale: ">28", fewCounted: false },
    { scale: "*", fewCounted: false },
    { scale: "-", fewCounted: false },
  ),
);

/** A code whose numbers do not rise. */
const someCode: fc.Arbitrary<CleanlinessCode> = fc.tuple(somePart, somePart, somePart).map((parts) => {
  const counted = parts.filter(({ scale }) => scale !== "*" && scale !== "-");
  counted.sort((one, other) => rank(other.scale) - rank(one.scale));
  const [at4, at6, at14] = parts.map((part) =>
    part.scale === "*" || part.scale === "-" ? part : (counted.shift() as CodePart),
  );
  return { at4, at6, at14 } as CleanlinessCode;
});

test("parseCode(printCode(code)) is the code", () => {
  fc.assert(
    fc.property(someCode, (code) => {
      expect(parseCode(printCode(code))).toEqual(code);
    }),
  );
});

test("codeOf(counts) names intervals that hold the counts", () => {
  fc.assert(
    fc.property(someCounts, (counts) => {
      const ranges = countsOf(codeOf(counts));
      for (const size of ["at4", "at6", "at14"] as const) {
        expect(counts[size]).toBeGreaterThan(ranges[size].moreThan);
        expect(counts[size]).toBeLessThanOrEqual(ranges[size].upTo);
      }
    }),
  );
});

test("codeOf(counts) never falls as the fuel gets dirtier", () => {
  fc.assert(
    fc.property(someCounts, between(1, 100), (counts, times) => {
      const { at4, at6, at14 } = counts;
      const dirtier = codeOf({ at4: at4 * times, at6: at6 * times, at14: at14 * times });
      expect(dirtierThan(codeOf(counts), dirtier)).toEqual([]);
    }),
  );
});

test("parseCode(text) refuses every code that rises", () => {
  const three = fc.tuple(fc.nat(28), fc.nat(28), fc.nat(28)).filter(([a, b, c]) => b > a || c > b);
  fc.assert(
    fc.property(three, (numbers) => {
      expect(() => parseCode(numbers.join("/"))).toThrow("at most");
    }),
  );
});

test("convertSize(size, from, to) and back is the size", () => {
  const scales = fc.constantFrom("um(c)", "um(b)", "ISO 4402");
  fc.assert(
    // 24.8 um(c) and 4.3 um(c) lie within reach of all three scales.
    fc.property(between(4.3, 24.8), scales, scales, (micrometres, from, to) => {
      const size = convertSize(micrometres / 1e6, "um(c)", from);
      expect(convertSize(convertSize(size, from, to), to, from) / size).toBeCloseTo(1, 12);
    }),
  );
});

test("dirtierThan(code, limit) names the sizes, takes the uncounted as dirty and an open limit as none", () => {
  expect(dirtierThan(parseCode("16/13/9"), parseCode("15/13/10"))).toEqual(["at4"]);
  expect(dirtierThan(parseCode("15/13/10"), parseCode("15/13/10"))).toEqual([]);
  expect(dirtierThan(parseCode("*/13/11"), parseCode("15/13/10"))).toEqual(["at4", "at14"]);
  expect(dirtierThan(parseCode(">28/28/28"), parseCode("28/-/*"))).toEqual(["at4"]);
});

test.each([
  ["18/16/13", "18/16/13"],
  [" 18 / 16 / 13 ", "18/16/13"],
  ["*/16/13", "*/16/13"],
  ["-/16/13", "-/16/13"],
  [">28/28/13", ">28/28/13"],
  ["14/12/≥7", "14/12/>=7"],
])("parseCode(%j) prints as %s", (text, printed) => {
  expect(printCode(parseCode(text))).toBe(printed);
});
