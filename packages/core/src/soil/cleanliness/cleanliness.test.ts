import { type CleanlinessCode, codeOf, convertSize, countsOf, dirtierThan, parseCode } from "@thirstline/core";
import { expect, test } from "vitest";

const over = (): CleanlinessCode => codeOf({ at4: 3e6, at6: 3e6, at14: 3e6 }, { at14: 5 });

test("countsOf(code) leaves open what a code leaves open, and has nothing above the last number", () => {
  const { at4, at6, at14 } = countsOf(parseCode("*/-/13"));
  expect([at4, at6, at14]).toEqual([
    { moreThan: 0, upTo: Infinity },
    { moreThan: 0, upTo: Infinity },
    { moreThan: 40, upTo: 80 },
  ]);
  expect(countsOf(over()).at4).toEqual({ moreThan: 2.5e6, upTo: Infinity });
});

test("codeOf(counts) beyond the last number is >28, which no few counted particles can put in doubt", () => {
  expect(over().at14).toEqual({ scale: ">28", fewCounted: false });
  expect(codeOf({ at4: 100, at6: 100, at14: 100 }, { at6: 19, at14: 20 })).toEqual({
    at4: { scale: 14, fewCounted: false },
    at6: { scale: 14, fewCounted: true },
    at14: { scale: 14, fewCounted: false },
  });
});

test("dirtierThan(code, limit) asks nothing where the limit is open, and takes an unknown or >28 as dirtier", () => {
  expect(dirtierThan(over(), parseCode("*/-/28"))).toEqual(["at14"]);
  expect(dirtierThan(parseCode("*/-/13"), parseCode("18/16/13"))).toEqual(["at4", "at6"]);
  expect(dirtierThan(parseCode("18/16/13"), over())).toEqual([]);
});

test("parseCode(text) takes the prefix and nothing else beside a number", () => {
  expect(parseCode(">=18/≥16/13").at6).toEqual({ scale: 16, fewCounted: true });
  for (const text of ["x18/16/13", "18x/16/13", "18/16/13 7", "118/16/13"])
    expect(() => parseCode(text)).toThrow("parseCode requires code to be three scale numbers");
});

test("convertSize(size, one scale, the same) is the size, in any", () => {
  expect(convertSize(10e-6, "um(c)", "um(c)")).toBe(10e-6);
  expect(convertSize(1e-3, "ISO 4402", "ISO 4402")).toBe(1e-3);
});
