import { expect, test } from "vitest";
import { stepByKey } from "./stepByKey.js";

test("stepByKey(key, at, last) goes along a row and stops at its ends", () => {
  expect([stepByKey("ArrowRight", 4, 60), stepByKey("ArrowLeft", 0, 60), stepByKey("End", 4, 60)]).toEqual([5, 0, 60]);
  expect([stepByKey("PageUp", 4, 60), stepByKey("PageUp", 58, 60), stepByKey("PageDown", 1, 3)]).toEqual([10, 60, 0]);
  expect(stepByKey("Enter", 4, 60)).toBeNull();
});
