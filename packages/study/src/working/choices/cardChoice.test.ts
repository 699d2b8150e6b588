import type { System, SystemFilter } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { demoSystem } from "../../../../../tests/support/fleets.js";
import type { CardAnswer } from "../../card/CardAnswer.js";
import type { CardOptions } from "../../card/card.js";
import { mapParts } from "../../choose/mapParts.js";
import { filterPlaces } from "../../choose/places.js";
import { cardChoice } from "./cardChoice.js";

/** The heron with every filter soiled, fitted the wrong way round, and all but one side of its bank open. */
const soiled = mapParts(demoSystem("heron"), (part) =>
  part.part === "filter" ? { ...part, restriction: 3, reversed: true, blocked: part.name === "prefilter B" } : part,
);
const pick = ({ name, restriction, reversed, blocked }: SystemFilter) => [
  name,
  restriction ?? "new",
  reversed,
  blocked,
];
const filtersOf = (system: System | undefined) => (system ? filterPlaces(system).map(({ part }) => pick(part)) : []);

const answer = (names: readonly string[], more: object = {}) =>
  ({
    elements: names.map((name) => ({ name, head: 0 })),
    volumes: {},
    priming: { forbidden: [], assumed: [] },
    settling: { code: "not known" },
    readings: [],
    duplex: null,
    ...more,
  }) as unknown as CardAnswer;
const choiceOf = (own: CardAnswer, options: CardOptions = {}) => cardChoice(soiled, own, options);

test("cardChoice(system, answer) fits new elements where the card has them changed, and leaves the others as they are", () => {
  const choice = choiceOf(answer(["prefilter A", "fine filter"]));
  expect([choice.question, choice.file, [...choice.variants.keys()]]).toEqual(["card", soiled, ["fitted"]]);
  const { system, change, asked } = choice.variants.get("fitted") ?? {};
  expect(filtersOf(system)).toEqual([
    ["prefilter A", "new", false, false],
    ["prefilter B", 3, true, true],
    ["fine filter", "new", false, false],
  ]);
  expect([change, asked]).toEqual(["the element changed for one like it", {}]);
});

test("cardChoice(system, answer, options) asks at the temperature asked for", () => {
  const readings = [
    { load: 0.4, demand: 2e-5 },
    { load: 1, demand: 5e-5 },
  ];
  const { variants } = choiceOf(answer([], { readings }), { temperature: 300 });
  expect([...variants].map(([name, { asked }]) => [name, asked])).toEqual([
    ["fitted", { temperature: 300 }],
    ["lowest load", { temperature: 300, demand: 2e-5 }],
  ]);
});

test("cardChoice(system, answer) has a lowest load only where one is read below full load", () => {
  const at = (...loads: readonly number[]) =>
    [...choiceOf(answer([], { readings: loads.map((load) => ({ load, demand: load })) })).variants.values()].map(
      ({ asked }) => asked.demand,
    );
  expect(at()).toEqual([undefined]);
  expect(at(1)).toEqual([undefined]);
  expect(at(0.999, 1)).toEqual([undefined, 0.999]);
});

test.each([
  // The side to change first is shut; what carries the flow meanwhile is opened only where the card says so.
  [true, [false, true]],
  [false, [true, true]],
])("cardChoice(system, answer) shuts one side of a bank, and opens the other: %s", (opened, [shutB]) => {
  const duplex = { first: "prefilter A", through: ["prefilter B"], opened };
  const { system, own } = choiceOf(answer([], { duplex })).variants.get("duplex") ?? {};
  expect(filtersOf(system)).toEqual([
    ["prefilter A", 3, true, true],
    ["prefilter B", 3, true, shutB],
    ["fine filter", 3, true, false],
  ]);
  expect(own).toEqual([]);
  // Every other part is as it was.
  expect(system?.suction.filter(({ part }) => part !== "bank")).toEqual(
    soiled.suction.filter(({ part }) => part !== "bank"),
  );
});
