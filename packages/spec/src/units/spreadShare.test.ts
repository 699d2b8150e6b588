import { expect, test } from "vitest";
import { spreadEnds } from "./spreadEnds.js";
import { spreadShare } from "./spreadShare.js";

test.each([
  ["1 % to 4 %", { low: 0.01, value: 0.02, high: 0.04 }],
  ["1 to 4 %", { low: 0.01, value: 0.02, high: 0.04 }],
  ["0 to 4%", { low: 0, value: 0.02, high: 0.04 }],
])("spreadShare(%j)", (text, spread) => {
  expect(spreadShare(text)).toEqual(spread);
  expect(spreadEnds(text)).toEqual({ low: `${spread.low * 100} %`, high: "4 %" });
});

test.each(["4 %", "1 to 4", "0.01 to 0.04", "to 4 %", ""])("spreadShare(%j) is no spread", (text) => {
  expect(spreadShare(text)).toBeUndefined();
});

test.each([
  ["2 % ± 50 %", '"2 % ± 50 %" may be meant in two ways; write both ends, such as "1 % to 3 %"'],
  ["4 to 1 %", '"4 to 1 %" is not two rising shares of the whole; write it as "1 to 4 %"'],
  ["4 to 4 %", '"4 to 4 %" is not two rising shares of the whole; write two, such as "1 % to 3 %"'],
  ["90 to 120 %", '"90 to 120 %" is not two rising shares of the whole; write two, such as "1 % to 3 %"'],
])("spreadShare(%j) says what is wrong and what would be right", (text, message) => {
  expect(spreadShare(text)).toMatchObject({ fault: { message } });
});
