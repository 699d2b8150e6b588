import type { CatalogueElement, System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoElements } from "../../../../../tests/properties/choose/arrangements.js";
import { figureLines } from "../../../../../tests/properties/working/figureLines.js";
import { stepLines } from "../../../../../tests/properties/working/stepLines.js";
import { demoSystem, unpredicted } from "../../../../../tests/support/fleets.js";
import type { SwapOptions } from "../../choose/swap.js";
import { life } from "../../life/life.js";
import { proofOf } from "../proof.js";
import type { Choice } from "./Choice.js";
import { choiceFigures, choiceWorking, isChoiceFigure } from "./choiceWorking.js";
import { costFigures } from "./costFigures.js";
import { fittingFigures } from "./fittingFigures.js";
import { inHandAtChange } from "./inHandAtChange.js";
import type { SideGiven } from "./SideGiven.js";
import { swapChoice } from "./swapChoice.js";

const pickup = demoSystem("pickup-single");
const lorry = demoSystem("lorry");
const [element] = demoElements("elements.csv") as [CatalogueElement];
const at = "fine filter F3";

const ownOf = (choice: Choice, of: string, name: string) =>
  choice.variants.get(of)?.own.filter((one) => one.name === name) ?? [];

test("swapChoice(system, given) has the system as it is, and with the other element in every place named once", () => {
  const choice = swapChoice(pickup, { at: [at, at], with: element });
  expect([choice.question, choice.file]).toEqual(["swap", pickup]);
  expect([...choice.variants].map(([name, { change, asked }]) => [name, change, asked])).toEqual([
    ["now", null, { draws: 200, seed: 1 }],
    ["changed", `the element catalogue's "${element.name}"`, { draws: 200, seed: 1 }],
  ]);
  const counted = { ...element, price: 10 };
  const twice = swapChoice(pickup, { at: [at, at], with: counted }, { draws: 4, seed: 2, fitted: counted });
  expect(twice.variants.get("now")?.asked).toEqual({ draws: 4, seed: 2 });
  const [cost] = ownOf(twice, "now", "cost of elements in a year").flatMap(({ make }) => make() ?? []);
  const n = cost?.origin.by === "formula" ? cost.origin.inputs.find(({ letter }) => letter === "n") : null;
  expect(n?.steps[0]?.value).toBe(1);
});

test("swapChoice(system, given, options) is judged at the warmest of the temperatures asked for, however they stand", () => {
  // It starves at all of them, so what it starves below is the warmest.
  const starved = { ...pickup, limits: { ...pickup.limits, feedPressure: 58e3 } };
  const choice = swapChoice(starved, { at, with: element }, { temperatures: [283.15, 293.15, 273.15] });
  expect(ownOf(choice, "now", "starves below")[0]?.make()?.value).toBe(293.15);
});

test("swapChoice(system, given, options) sets what file and catalogue state of water beside each other, and the rating asked", () => {
  const wet = {
    ...element,
    filter: { ...element.filter, separation: { efficiency: 0.8, flow: 1e-5 } },
  } as CatalogueElement;
  const own = (other: CatalogueElement, options: SwapOptions = {}, place = "prefilter P15") =>
    figureLines(
      swapChoice(lorry, { at: place, with: other }, options)
        .variants.get("changed")
        ?.own.filter(({ group }) => group === "What is asked") ?? [],
    ).map((line) => line.replace("What is asked: ", ""));
  expect(own(wet, { rating: { beta: 200, size: 4e-6 } })).toEqual([
    "water kept by what is fitted = 0.95 | largest share kept (ratio, 1) | most-kept: e[] share of free water kept",
    `water kept by the other element = 0.8 | share of free water kept (ratio, 1) | source the element catalogue, "${element.name}" | 0.8`,
    "beta asked = 200 | beta asked (plain, 1) | asked rating | 200",
    "size asked = 0.000004 | size asked (particle size, m) | asked rating | 0.000004",
  ]);
  const { separation: _, ...dry } = element.filter;
  expect(own({ ...element, filter: dry }, {}, "fine filter F4")).toEqual([]);
  const [kept] = ownOf(
    swapChoice(lorry, { at: "prefilter P15", with: wet }),
    "changed",
    "water kept by what is fitted",
  );
  expect(stepLines([kept?.make()].flatMap((step) => step ?? []))[1]).toBe(
    "share of free water kept (ratio, 1) | source the system file | 0.95",
  );
});

const choice = swapChoice(pickup, { at, with: element });

test("choiceWorking(choice, leaf) is of the system as it is where a leaf does not say of which", () => {
  const now = choiceWorking(choice, { figure: "feed pressure", asked: {} });
  expect(now?.step.value).toBe(choiceWorking(choice, { of: "now", figure: "feed pressure", asked: {} })?.step.value);
  expect(isChoiceFigure(choice, { figure: "feed pressure", asked: {} })).toBe(true);
  expect(isChoiceFigure(choice, { figure: "most flow allowed", asked: {} })).toBe(false);
  expect(isChoiceFigure(choice, { of: "changed", figure: "most flow allowed", asked: {} })).toBe(true);
  expect(isChoiceFigure(choice, { of: "elsewhere", figure: "feed pressure", asked: {} })).toBe(false);
  // A figure of the life's way there is one only where a moment of it is asked for.
  const moment = "vacuum at a moment";
  expect(isChoiceFigure(choice, { figure: moment, asked: {} })).toBe(false);
  expect(isChoiceFigure(choice, { figure: moment, asked: { moment: 0 } })).toBe(true);
});

test("choiceFigures(choice, of) lists a figure once, the question's own for check's of the same name, and places as the file has them", () => {
  const all = choiceFigures(choice, "changed");
  const names = all.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  expect(all.find(({ name }) => name === "service interval")).toEqual({
    name: "service interval",
    group: "Side by side",
    step: null,
  });
  const step = all.find(({ name }) => name === "feed pressure")?.step;
  expect(stepLines(step ? [step] : []).join("\n")).toContain(
    `source the element catalogue's "${element.name}": flow test[0]`,
  );
  const asked = choiceFigures(choice, "changed", { moment: 0 }).map(({ name }) => name);
  expect(asked).toContain("vacuum at a moment");
  expect(names).not.toContain("vacuum at a moment");
});

const side = (more: Partial<SideGiven>): SideGiven => ({
  system: pickup,
  at: [at],
  temperatures: [268.15, 293.15],
  element: null,
  options: {},
  asked: { draws: 8, seed: 1 },
  ...more,
});
function costsOf(more: Partial<SideGiven>) {
  const made = costFigures(side(more)).map(({ name, slow, make }) => {
    const step = make();
    if (step) expect(proofOf({ step }).misses).toEqual([]);
    expect(slow).toBe(true);
    return [name, step === null ? null : step.value] as const;
  });
  return Object.fromEntries(made);
}
const { year, change } = life(pickup);
const changes = year / (change?.time ?? Number.NaN);
const priced = (more: Partial<CatalogueElement>): CatalogueElement => {
  const { price: _, labour: __, ...rest } = element;
  return { ...rest, ...more };
};

test("costFigures(given) adds elements, work and stoppages, each where it is known", () => {
  const near = (value: number) => expect.closeTo(value, 9);
  expect(costsOf({})).toEqual({
    "changes a year": near(changes),
    "cost of elements in a year": null,
    "cost of work in a year": null,
    "cost of stoppages in a year": null,
    "cost of a year": null,
  });
  const two = { at: [at, "elsewhere"], element: priced({ price: 10, labour: 1800 }) };
  expect(costsOf(two)).toMatchObject({
    "cost of elements in a year": near(changes * 2 * 10),
    "cost of work in a year": null,
    "cost of a year": near(changes * 2 * 10),
  });
  expect(costsOf({ ...two, options: { labourRate: 60 } })).toMatchObject({
    "cost of work in a year": near(changes * 2 * 30),
    "cost of a year": near(changes * 2 * 40),
  });
  // Work is nothing to speak of where its element's is not stated, or no price of the element.
  expect(costsOf({ element: priced({ price: 10 }), options: { labourRate: 60 } })).toMatchObject({
    "cost of work in a year": null,
    "cost of a year": near(changes * 10),
  });
  expect(costsOf({ element: priced({ labour: 1800 }), options: { labourRate: 60 } })).toMatchObject({
    "cost of elements in a year": null,
    "cost of work in a year": near(changes * 30),
    "cost of a year": null,
  });
});

test("costFigures(given) counts a stoppage at its chance, and none where no life can be told", () => {
  const found = costsOf({ element: priced({ price: 10 }), options: { stoppage: 2000 } });
  const stoppages = Number(found["cost of stoppages in a year"]);
  const share = stoppages / (changes * 2000);
  expect(share * 8).toBeCloseTo(Math.round(share * 8), 9);
  expect(found["cost of a year"]).toBeCloseTo(changes * 10 + stoppages, 9);
  const none = { element: priced({ price: 10, labour: 60 }), options: { stoppage: 2000, labourRate: 60 } };
  expect(Object.values(costsOf({ system: unpredicted(pickup), ...none }))).toEqual([null, null, null, null, null]);
});

test("costFigures(given) of an element that is spent at once has no changes in a year, since they have no end", () => {
  expect(Object.values(costsOf({ system: demoSystem("generator-soiled"), element: priced({ price: 10 }) }))).toEqual([
    null,
    null,
    null,
    null,
    null,
  ]);
});

test("fittingFigures(given) tells the most flow over the temperatures, and what the maker allows", () => {
  const lines = (more: Partial<SideGiven>) => figureLines(fittingFigures(side(more)));
  // 12 L/h of burn and 60 L/h of return, whatever the temperature.
  expect(lines({})[0]).toMatch(
    "most flow at the places, slow = 0.00002 | most flow at the places (flow, m3/s) | highest-flow",
  );
  expect(lines({ element: { ...element, mostFlow: 1e-4 } })[1]).toBe(
    `Whether it fits: most flow allowed = 0.0001 | most flow its maker allows (flow, m3/s) | source the element catalogue, "${element.name}" | 0.0001`,
  );
  const { mostFlow: _, ...free } = element;
  expect(lines({ element: free }).map((line) => line.split(" = ")[0])).toEqual([
    "Whether it fits: most flow at the places, slow",
  ]);
  expect(lines({ temperatures: [] })).toEqual([]);
  expect(lines({ at: ["elsewhere"] })).toEqual([]);
});

test("inHandAtChange(system, temperature) is null without an interval, without a life, and where a limit comes first", () => {
  const { service: _, ...bare } = pickup;
  expect(inHandAtChange(bare as System, 268.15)).toBeNull();
  expect(inHandAtChange(unpredicted(pickup), 268.15)).toBeNull();
  const late = { ...pickup, service: { ...pickup.service, interval: 2e6 } } as System;
  expect(inHandAtChange(late, 268.15)).toBeNull();
});
