import { dayOf } from "@thirstline/study";
import { fleetChoice, fleetFigures, fleetWorking, leafAt, proofOf } from "@thirstline/study/working";
import { expect, test } from "vitest";
import { fleetJson } from "../../../packages/cli/src/json/fleetJson.js";
import { answerLeaves } from "./answerLeaves.js";
import { faultsOf } from "./faultsOf.js";
import { fullYard, on } from "./fullYard.js";

const given = fullYard();
const [, , answer] = given;
const choice = fleetChoice(...given);

test("every figure of fleet has a working that comes out, units and all", { timeout: 120_000 }, () => {
  const json = fleetJson(answer);
  const leaves = answerLeaves(json, 1);
  expect(leaves.length).toBeGreaterThan(100);
  const faults = faultsOf(leaves, {
    leafOf: (path) => leafAt("fleet", json, path),
    workingOf: (leaf) => fleetWorking(choice, leaf),
  });
  expect(faults).toEqual([]);
});

test("every limit with a date has days to it, which come to that date and prove", { timeout: 120_000 }, () => {
  const kinds = new Set<string>();
  for (const [at, { elements }] of answer.entries.entries()) {
    for (const { element, limits } of elements) {
      for (const { by, date } of limits) {
        const figure = `days to the limit of ${element} by ${by}`;
        const working = fleetWorking(choice, { of: `machine ${at}`, figure, asked: {} });
        const days = date === null ? undefined : dayOf(date) - dayOf(on);
        expect(working?.step.value, figure).toBe(days);
        if (working) expect(proofOf(working).misses, figure).toEqual([]);
        if (date !== null) kinds.add(by);
      }
    }
  }
  expect([...kinds].sort()).toEqual(["calendar", "distance", "gauge", "hours", "restriction"]);
});

test("what to order of each part is what the answer says is short", () => {
  expect(answer.parts.length).toBeGreaterThan(3);
  for (const [at, { short }] of answer.parts.entries()) {
    const leaf = { of: `part ${at}`, figure: "parts to order", asked: {} };
    expect(fleetWorking(choice, leaf)?.step.value).toBe(short);
  }
});

test("what is no figure of a yard has no working", () => {
  expect(fleetWorking(choice, { of: "machine 99", figure: "gauge", asked: {} })).toBeNull();
  expect(fleetWorking(choice, { of: "yard", figure: "gauge", asked: {} })).toBeNull();
  expect(fleetFigures(choice, "yard")).toEqual(["days looked ahead"]);
});
