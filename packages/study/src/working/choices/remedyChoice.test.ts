import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { figureLines } from "../../../../../tests/properties/working/figureLines.js";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import { demoSystem } from "../../../../../tests/support/fleets.js";
import { check } from "../../check/check.js";
import type { Remedy, RemedyAnswer, RemedyResult } from "../../choose/RemedyAnswer.js";
import type { RemedyOptions } from "../../choose/remedy.js";
import { proofOf } from "../proof.js";
import type { Step } from "../Step.js";
import { choiceWorking } from "./choiceWorking.js";
import { remedyChoice } from "./remedyChoice.js";

const pickup = demoSystem("pickup-single");
const COLDEST = 268.15;

const result = (changes: readonly Remedy[], more: Partial<RemedyResult> = {}) =>
  ({ changes, temperature: COLDEST, overClean: null, cost: null, ...more }) as RemedyResult;
const answer = (more: Partial<RemedyAnswer>) => ({ now: result([]), single: [], pairs: [], ...more }) as RemedyAnswer;

const warmer: Remedy = { kind: "warmer fuel", by: 10 };
const cooler: Remedy = { kind: "cooler fuel", by: 5 };
const shorter: Remedy = { kind: "shorter run", part: "engine pipe", from: 1.2, to: 0.9 };

/** A figure of what is changed alone. */
function figure(
  name: string,
  one: RemedyResult,
  { system = pickup, options = {} }: { system?: System; options?: RemedyOptions } = {},
) {
  const choice = remedyChoice(system, answer({ single: [one] }), options);
  const step = choiceWorking(choice, { of: "single 0", figure: name, asked: {} })?.step ?? null;
  if (step) expect(proofOf({ step }).misses).toEqual([]);
  return step;
}

test("remedyChoice(system, answer) has each change by its place in the answer, and what it is in words", () => {
  const choice = remedyChoice(
    pickup,
    answer({
      single: [result([warmer], { temperature: 278.15 }), result([shorter])],
      pairs: [result([shorter, warmer])],
    }),
  );
  expect([choice.question, choice.file]).toEqual(["remedy", pickup]);
  expect([...choice.variants].map(([name, { change, asked }]) => [name, change, asked.temperature])).toEqual([
    ["now", null, COLDEST],
    ["single 0", "as changed: warmer fuel", 278.15],
    ["single 1", "as changed: shorter run", COLDEST],
    ["pairs 0", "as changed: shorter run, warmer fuel", COLDEST],
  ]);
  const pipeOf = (of: string) =>
    choice.variants.get(of)?.system.delivery?.flatMap((part) => (part.part === "line" ? part.length : []));
  expect([pipeOf("now"), pipeOf("single 1"), pipeOf("pairs 0")]).toEqual([[1.2], [0.9], [0.9]]);
});

test("remedyChoice(system, answer) lists what a change buys, and its own figures by their places", () => {
  const { own = [] } =
    remedyChoice(pickup, answer({ pairs: [result([shorter, warmer])] })).variants.get("pairs 0") ?? {};
  expect(own.map(({ group, name, slow }) => [group, name, slow])).toEqual(
    [
      "temperature where least is in hand",
      "vacuum over the clean limit",
      "ceiling gained",
      "cost",
      "change 1, from",
      "change 1, to",
      "change 2, by",
    ].map((name) => ["What it buys", name, true]),
  );
});

const wordsOf = (step: Step | null) =>
  step?.origin.by === "search" ? step.origin.checks.map(({ words }) => words) : [];

test.each<[changes: readonly Remedy[], least: number, other: number]>([
  [[warmer], 5, 30],
  [[cooler], -10, 15],
  [[cooler, warmer], 0, 25],
])(
  "remedyChoice(system, answer, options) seeks where least is in hand with the fuel as warm as %j makes it",
  (changes, least, other) => {
    const options = { temperatures: [COLDEST, 293.15] };
    const name = "temperature where least is in hand";
    const step = figure(name, result(changes, { temperature: least + 273.15 }), { options });
    expect(step?.value).toBeCloseTo(least + 273.15, 9);
    expect(wordsOf(step)).toEqual([`no less is in hand at ${other} °C`]);
  },
);

test("remedyChoice(system, answer) is judged at the file's own temperatures where no others are asked for", () => {
  // The pickup's seasons and its file's own fuel are at -5, 15 and 20 °C.
  expect(wordsOf(figure("temperature where least is in hand", result([shorter])))).toEqual(
    [15, 20].map((one) => `no less is in hand at ${one} °C`),
  );
});

test("remedyChoice(system, answer) tells by how much the most vacuum is over the clean limit", () => {
  const system = { ...pickup, limits: { ...pickup.limits, vacuumClean: 2000 } };
  const temperatures = [COLDEST, 288.15, 293.15];
  const most = Math.max(...check(system, { temperatures }).points.map(({ vacuum }) => vacuum?.high ?? Number.NaN));
  const step = figure("vacuum over the clean limit", result([shorter], { overClean: most - 2000 }), { system });
  expect(step?.value).toBeCloseTo(most - 2000, 6);
  expect(stepLines(step ? [step] : [])[0]).toBe(
    "vacuum over the clean limit (vacuum, Pa) | over-clean-limit: V[] vacuum, high end; V_l clean limit",
  );
  const each = step?.origin.by === "formula" ? step.origin.inputs.map(({ steps }) => steps.length) : [];
  expect(each).toEqual([3, 1]);
});

test("remedyChoice(system, answer) has no vacuum over the clean limit where it holds, or where nothing says", () => {
  const name = "vacuum over the clean limit";
  expect(figure(name, result([shorter]))).toBeNull();
  // Without a pump nothing sucks.
  expect(figure(name, result([warmer], { overClean: 5 }), { system: demoSystem("generator") })).toBeNull();
  expect(figure(name, result([shorter], { overClean: 5 }), { options: { temperatures: [] } })).toBeNull();
});

test("remedyChoice(system, answer) tells what a change costs, by what was stated of its kinds", () => {
  const costs = { "shorter run": 40, "warmer fuel": 300 };
  const both = figure("cost", result([shorter, warmer], { cost: 340 }), { options: { costs } });
  expect([both?.value, ...stepLines(both ? [both] : [])]).toEqual([
    340,
    "cost (SI, stated currency) | changes-cost: c[] cost of shorter run, cost of warmer fuel",
    "cost of shorter run (SI, stated currency) | asked cost | 40",
    "cost of warmer fuel (SI, stated currency) | asked cost | 300",
  ]);
  expect(figure("cost", result([shorter]))).toBeNull();
  const none = figure("cost", result([], { cost: 0 }));
  expect(stepLines(none ? [none] : [])).toEqual(["cost (SI, stated currency) | words nothing is changed:  | 0"]);
});

test("remedyChoice(system, answer) tells the places of the ceiling gained on by the file, though the change moves them", () => {
  // A rise is put before the pipe and the filter of the delivery side, whose places in the changed system are not the file's.
  const step = figure("ceiling gained", result([{ kind: "lower pump", by: 0.3 }]));
  const [then, now] = step?.origin.by === "formula" ? step.origin.inputs.map(({ steps }) => stepLines(steps)) : [];
  const pipe = "length (length, m) | file delivery[0].line.length | 1.2";
  expect(now).toContain(pipe);
  expect(now?.join("\n")).not.toContain("as changed");
  expect(then?.join("\n")).toContain("height it climbs (length, m) | source as changed: lower pump | -0.3");
  expect(then?.map((line) => line.replace(" @ delivery.0", ""))).toContain(pipe);
});

test("remedyChoice(system, answer) has no ceiling gained where there was none", () => {
  const shut = {
    ...pickup,
    suction: pickup.suction.map((part) => (part.part === "filter" ? { ...part, blocked: true } : part)),
  };
  const delivery = (pickup.delivery ?? []).map((part) => (part.part === "filter" ? { ...part, blocked: true } : part));
  expect(figure("ceiling gained", result([shorter]), { system: { ...shut, delivery } })).toBeNull();
});

test("remedyChoice(system, answer) tells a change's own figures", () => {
  const { own = [] } = remedyChoice(pickup, answer({ single: [result([shorter])] })).variants.get("single 0") ?? {};
  expect(figureLines(own.filter(({ name }) => name.startsWith("change ")))).toEqual([
    "What it buys: change 1, from, slow = 1.2 | length (length, m) | file delivery[0].line.length | 1.2",
    "What it buys: change 1, to, slow = 0.9 | length tried (length, m) | shorter-run: x share of it that stays; L length",
  ]);
});
