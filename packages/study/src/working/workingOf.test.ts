import { expect, test } from "vitest";
import { demoSystem } from "../../../../tests/support/fleets.js";
import { figuresOf, isFigure, type Step, stepsBefore, workingOf } from "./index.js";

/** Every value of a working that the file states, by its name, and where it stands there. */
function statedIn(name: string, figure: string): string[] {
  const seen = new Set<Step>();
  const walk = (step: Step): void => {
    if (seen.has(step)) return;
    seen.add(step);
    stepsBefore(step).forEach(walk);
  };
  const working = workingOf(demoSystem(name), figure);
  if (!working) throw new Error(`${name} has no ${figure}`);
  walk(working.step);
  const stated = [...seen].flatMap(({ name: called, origin }) =>
    origin.by === "file" ? [`${called}: ${origin.path}`] : [],
  );
  return [...new Set(stated)].sort();
}

const fuel = [
  "power: demand.power",
  "return: demand.return",
  "specific consumption: demand.specific consumption",
  "temperature: fuel.temperature",
];

test.each([
  [
    "heron",
    "drop of fine filter",
    [
      "drop in the test: delivery[1].filter.flow test[0].drop",
      "dynamic viscosity of the test fluid: delivery[1].filter.flow test[0].viscosity",
      "flow in the test: delivery[1].filter.flow test[0].flow",
    ],
  ],
  [
    "lorry",
    "flow in left hose",
    [
      "bore: tanks[0].path[0].line.bore",
      "bore: tanks[1].path[0].line.bore",
      "fuel over the pick-up when low: tanks[0].low depth",
      "fuel over the pick-up when low: tanks[1].low depth",
      "length: tanks[0].path[0].line.length",
      "length: tanks[1].path[0].line.length",
    ],
  ],
] as const)("workingOf(%s, %j) ends in the values its file states, each at its place there", (name, figure, own) => {
  expect(statedIn(name, figure)).toEqual([...fuel, ...own].sort());
});

test("workingOf(lorry, flow of a hose) sets the drop along it against that of another, tanks and all", () => {
  const step = workingOf(demoSystem("lorry"), "flow in left hose")?.step;
  const along = stepsBefore(step as Step).filter(({ name }) => name.startsWith("drop along"));
  expect(along.map(({ name }) => name)).toEqual(["drop along this branch", "drop along another"]);
  expect(along.map((one) => stepsBefore(one).map(({ name }) => name))).toEqual([
    ["drop of left tank", "drop of left hose"],
    ["drop of right tank", "drop of cross-over hose"],
  ]);
  expect(along[0]?.value).toBeCloseTo(along[1]?.value ?? Number.NaN, 6);
});

test("isFigure(system, name) knows figures of check and of life, with a value here or without", () => {
  const pickup = demoSystem("pickup-single");
  expect(["vacuum", "end of life", "CFPP"].map((name) => isFigure(pickup, name))).toEqual([true, true, true]);
  expect(isFigure(pickup, "colour")).toBe(false);
  // A generator has no pump, and so no vacuum limit; the figure there is all the same.
  const generator = demoSystem("generator");
  expect([isFigure(generator, "clean limit"), workingOf(generator, "clean limit")]).toEqual([true, null]);
  expect([isFigure(generator, "vacuum at a moment"), isFigure(generator, "vacuum at a moment", { moment: 0 })]).toEqual(
    [false, true],
  );
});

test("figuresOf(system, asked) lists figures of check before those of life, each with its working's last step or none", () => {
  const all = figuresOf(demoSystem("pickup-single"), { temperature: 280 });
  const at = (name: string) => all.findIndex((one) => one.name === name);
  expect(at("vacuum")).toBeLessThan(at("end of life"));
  expect(all[at("temperature")]?.step?.value).toBe(280);
  expect(all[at("end of life")]).toEqual({ name: "end of life", group: "How long the elements last", step: null });
  expect(new Set(all.map(({ name }) => name)).size).toBe(all.length);
});
