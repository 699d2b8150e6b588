import { expect, test } from "vitest";
import { painter } from "./paint.js";

const painted = (isTerminal: boolean, environment: Record<string, string>) =>
  painter({ isTerminal, environment })("bad", "starves") !== "starves";

test("painter(io) colours a terminal only", () => {
  expect(painted(true, {})).toBe(true);
  expect(painted(false, {})).toBe(false);
  expect(painted(true, { TERM: "dumb" })).toBe(false);
});

test("painter(io) heeds NO_COLOR, unless it is empty", () => {
  expect(painted(true, { NO_COLOR: "1" })).toBe(false);
  expect(painted(true, { NO_COLOR: "" })).toBe(true);
});

test("painter(io) heeds FORCE_COLOR before all else", () => {
  expect(painted(false, { FORCE_COLOR: "1", NO_COLOR: "1" })).toBe(true);
  expect(painted(true, { FORCE_COLOR: "0" })).toBe(false);
});
