import { expect, test } from "vitest";
import { type Exit, exit, fleetExit, worst } from "./exit.js";

test("worst(codes) takes 2 over 1 over 4 over 3 over 0", () => {
  const order: Exit[] = [2, 1, 4, 3, 0];
  order.forEach((code, at) => {
    expect(worst([...order.slice(at)].reverse())).toBe(code);
  });
});

test("worst(codes) of nothing is a yes", () => {
  expect(worst([])).toBe(exit.yes);
});

test.each([
  ["late", null, 1],
  ["now", "a nuisance", 1],
  ["within", null, 3],
  ["left alone", "a nuisance", 3],
  ["later", null, 0],
  ["cannot say", null, 4],
  ["cannot say", "stops the work", 4],
  ["cannot say", "a nuisance", 0],
] as const)("fleetExit(entry) of a machine that is %s and %s when it stops is %d", (group, stakes, code) => {
  expect(fleetExit({ group, stakes })).toBe(code);
});
