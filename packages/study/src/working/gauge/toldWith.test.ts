import { expect, test } from "vitest";
import { timesDemand } from "../formulas/gauge.js";
import type { Step } from "../Step.js";
import { asked, inWords, worked } from "../worked.js";
import { toldWith } from "./toldWith.js";

const plain = (name: string, value: number) => ({ name, value, unit: "1", kind: "plain" }) as const;
const putIn = {
  demand: inWords("noted", { name: "demand as noted", value: 5e-5, unit: "m3/s", kind: "flow" }),
  temperature: inWords("noted too", { name: "temperature", value: 280, unit: "K", kind: "temperature" }),
  ratios: [inWords("of the table", plain("resistance over clean of A", 3))],
};
const told = (step: Step) => toldWith(step, putIn);

test("toldWith(step, put in) leads a demand that was asked to where it comes from, its own name and value kept", () => {
  const step = asked("demand", { name: "flow to the engine", value: 5.1e-5, unit: "m3/s", kind: "plain" });
  expect(told(step)).toEqual({ ...putIn.demand, name: "flow to the engine", value: 5.1e-5, kind: "plain" });
});

test("toldWith(step, put in) leads a temperature that was asked to where it comes from, by its own name", () => {
  const step = asked("temperature", { name: "fuel temperature", value: 280, unit: "K", kind: "temperature" });
  expect(told(step)).toEqual({ ...putIn.temperature, name: "fuel temperature" });
});

test("toldWith(step, put in) leads a part's resistance to the one that was put in", () => {
  const ratio = inWords("now", { ...plain("resistance over clean", 3), part: ["suction", 1] });
  expect(told(ratio)).toEqual({ ...ratio, origin: { by: "words", words: "now", from: putIn.ratios } });
});

test("toldWith(step, put in) leaves all else as it is", () => {
  const others: Step[] = [
    asked("moment", { name: "moment", value: 5, unit: "s" }),
    inWords("now", plain("resistance over clean", 3)),
    inWords("now", { ...plain("resistance over clean", 2), part: ["suction", 1] }),
    inWords("now", { name: "length", value: 3, unit: "m", part: ["suction", 1] }),
    { ...inWords("now", { ...plain("share", 3), part: ["suction", 1] }), origin: { by: "file", path: "x" } },
  ];
  for (const one of others) expect(told(one)).toEqual(one);
});

test("toldWith(step, put in) goes through all that a step rests on", () => {
  const f = inWords("put in here", plain("f", 2));
  const Q = asked("demand", { name: "Q", value: 5e-5, unit: "m3/s", kind: "flow" });
  const step = told(worked(timesDemand, { f, Q }));
  const inside = step.origin.by === "formula" ? step.origin.inputs.map(({ steps }) => steps[0]) : [];
  expect(inside).toEqual([f, { ...putIn.demand, name: "Q" }]);
});
