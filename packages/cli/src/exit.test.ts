import { expect, test } from "vitest";
import { type Exit, exit, worst } from "./exit.js";

test("worst(codes) takes 2 over 1 over 4 over 3 over 0", () => {
  const order: Exit[] = [2, 1, 4, 3, 0];
  order.forEach((code, at) => {
    expect(worst([...order.slice(at)].reverse())).toBe(code);
  });
});

test("worst(codes) of nothing is a yes", () => {
  expect(worst([])).toBe(exit.yes);
});
