import { type LoadingLawName, lawConstants } from "@thirstline/core";
import { expect, test } from "vitest";
import { onePut, stepsIn, told } from "../../../../../tests/support/steps.js";
import { flat, type Shape, shapes } from "../../gauge/shapes.js";
import { proofOf } from "../proof.js";
import type { Step } from "../Step.js";
import { loadStep, ratioStep } from "./lawSteps.js";

const of = (name: string, value: number): Step => ({
  name,
  value,
  unit: "1",
  kind: "plain",
  origin: { by: "file", path: "x" },
});
/** A law as nothing remembers it. */
const fresh = (law: LoadingLawName, mix: number | null = null): Shape => {
  const shape = shapes.find((one) => one.law === law && one.mix === mix);
  if (!shape) throw new Error(`no ${law} of mix ${mix}`);
  return { ...shape };
};
const words = ({ origin }: Step) => (origin.by === "words" ? origin.words : origin.by);

test("loadStep(shape, r) and ratioStep(shape, l) come to the table of every law, with proof", () => {
  for (const law of Object.keys(lawConstants) as LoadingLawName[]) {
    const shape = fresh(law, lawConstants[law].length === 1 ? null : 0.25);
    const load = loadStep(shape, of("r", 3.3));
    expect(load.value, law).toBeCloseTo(shape.load(3.3), 12);
    expect(ratioStep(shape, load).value, law).toBeCloseTo(3.3, 9);
    expect(proofOf({ step: load }).misses, law).toEqual([]);
  }
});

test("loadStep(shape, r) of a cake is by hand: a load of 1 makes four times clean, and it grows evenly", () => {
  expect(loadStep(fresh("cake"), of("r", 4)).value).toBeCloseTo(1, 4);
  expect(loadStep(fresh("cake"), of("r", 2.5)).value).toBeCloseTo(0.5, 4);
  expect(ratioStep(fresh("cake"), of("l", 2)).value).toBeCloseTo(7, 3);
});

test("loadStep(shape, r) says where there is no load, and where the table ends", () => {
  const r = of("r", 1);
  expect(loadStep(fresh("cake"), r)).toEqual({
    name: "load",
    value: 0,
    unit: "1",
    kind: "plain",
    origin: { by: "words", words: "a clean element carries none", from: [r] },
  });
  expect(loadStep(fresh("cake"), of("r", 0.9)).value).toBe(0);
  const beyond = of("r", 1e5);
  const shape = fresh("cake");
  expect(loadStep(shape, beyond)).toEqual({
    name: "load",
    value: shape.load(1e4),
    unit: "1",
    kind: "plain",
    origin: { by: "words", words: "the end of the table", from: [beyond] },
  });
  const last = loadStep(shape, of("r", 1e4));
  expect([words(last), last.value]).toEqual(["formula", expect.closeTo(shape.load(1e4), 9)]);
});

test("ratioStep(shape, l) says where there is no soil, and where the table ends", () => {
  const l = of("l", 0);
  expect(ratioStep(fresh("cake"), l)).toEqual({
    name: "resistance over clean",
    value: 1,
    unit: "1",
    kind: "plain",
    origin: { by: "words", words: "no soil is on it yet", from: [l] },
  });
  const much = of("l", 1e6);
  expect(ratioStep(fresh("cake"), much, "so called")).toEqual({
    name: "so called",
    value: 1e4,
    unit: "1",
    kind: "plain",
    origin: { by: "words", words: "the end of the table", from: [much] },
  });
  expect(ratioStep(fresh("cake"), of("l", 1), "so called").name).toBe("so called");
});

test("ratioStep(shape, l) at a step of the table goes on from that step", () => {
  const shape = fresh("intermediate");
  for (const k of [1, 7, 90, 301]) {
    const load = shape.load(Math.exp((k * Math.log(1e4)) / 600));
    for (const by of [1 - 1e-12, 1, 1 + 1e-12]) {
      const step = ratioStep(shape, of("l", load * by));
      expect(step.value).toBeCloseTo(shape.ratio(load * by), 9);
      const below = step.origin.by === "formula" ? step.origin.inputs.find(({ letter }) => letter === "a") : undefined;
      expect(below?.steps[0]?.value).toBeLessThanOrEqual(load * by);
    }
  }
});

test("loadStep(shape, r) leads each step of the table back to the law itself", () => {
  const { origin } = loadStep(fresh("cake"), of("r", 1.1));
  if (origin.by !== "formula") throw new Error("no formula");
  const inputs = new Map(origin.inputs.map(({ letter, steps }) => [letter, steps[0] as Step]));
  // Steps of ln(10000)/600: ln(1.1) lies between the sixth and the seventh.
  expect(inputs.get("k")).toEqual({
    ...of("number of the step", 6),
    origin: { by: "words", words: "counted: the step of the table just below", from: [] },
  });
  const node = inputs.get("a");
  expect([node?.name, node?.value]).toEqual([
    "load at step 6 of the table",
    expect.closeTo((Math.exp(0.0921034) - 1) / 3, 6),
  ]);
  if (node?.origin.by !== "search") throw new Error("no search");
  expect(node.origin.words).toBe("the load at which the law itself comes to the resistance of that step");
  const [check] = node.origin.checks;
  expect([check?.words, check?.relation, check?.right.value]).toEqual([
    "at that load the law comes to that resistance",
    "=",
    expect.closeTo(Math.exp(0.0921034), 6),
  ]);
  const inside = (step: Step | undefined, letter: string): Step | undefined =>
    step?.origin.by === "formula" ? step.origin.inputs.find((input) => input.letter === letter)?.steps[0] : undefined;
  expect(inside(check?.right, "k")).toMatchObject({
    name: "number of the step",
    value: 6,
    origin: { words: "counted" },
  });
  expect(inside(check?.left, "m")).toMatchObject({
    name: "load at step 6 of the table",
    origin: { words: "as found" },
  });
  expect(loadStep(fresh("cake"), of("r", 1.1))).toEqual(loadStep(fresh("cake"), of("r", 1.1)));
  const shape = fresh("cake");
  const nodeOf = (r: number) => onePut(loadStep(shape, of("r", r)), "a");
  expect(nodeOf(1.1)).toBe(nodeOf(1.101));
});

test("loadStep(shape, r) of a mixed law divides its two constants by the mix, each told with its own full one", () => {
  const load = loadStep(fresh("cake-complete", 0.25), of("r", 1.1));
  const said = stepsIn(load).map((one) => {
    const [name, value, , , from] = told(one);
    return one.origin.by === "formula" ? from : `${name} ${value}: ${from}`;
  });
  expect([...new Set(said)].filter((one) => /of-mix|mixes|load of 1/.test(one)).sort()).toEqual([
    "gauge-first-of-mix",
    "gauge-second-of-mix",
    "load 1: a load of 1 is so chosen",
    "part of the second constant 0.25: one of the mixes tried",
    "resistance over clean at a load of 1 4: a load of 1 is so chosen",
  ]);
});

test("loadStep(shape, r) of no growth carries no load, whatever the resistance", () => {
  // A copy, since what is made of a law is kept with it.
  const load = loadStep({ ...flat }, of("r", 2));
  expect(load.value).toBe(0);
  const node = onePut(load, "a");
  const [check] = node.origin.by === "search" ? node.origin.checks : [];
  expect(check?.left).toMatchObject({
    name: "resistance over clean",
    value: 1,
    unit: "1",
    kind: "plain",
    origin: { by: "words", words: "no growth", from: [{ name: node.name, value: 0 }] },
  });
});
