import { readFileSync } from "node:fs";
import { readReadings } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import {
  asFitted,
  card,
  check,
  fittedFrom,
  gauge,
  life,
  remedy,
  type SizeAnswer,
  sizeSteps,
  swap,
} from "@thirstline/study";
import {
  type Choice,
  cardChoice,
  choiceWorking,
  gaugeChoice,
  gaugeWorking,
  leafAt,
  remedyChoice,
  sizeChoice,
  swapChoice,
  type WorkedQuestion,
  workingOf,
} from "@thirstline/study/working";
import { expect, test } from "vitest";
import { cardJson } from "../../packages/cli/src/json/cardJson.js";
import { checkJson } from "../../packages/cli/src/json/checkJson.js";
import { gaugeJson } from "../../packages/cli/src/json/gaugeJson.js";
import { lifeJson } from "../../packages/cli/src/json/lifeJson.js";
import { remedyJson } from "../../packages/cli/src/json/remedyJson.js";
import { sizeJson } from "../../packages/cli/src/json/sizeJson.js";
import { swapJson } from "../../packages/cli/src/json/swapJson.js";
import { demoElements, demoSystem } from "../properties/choose/arrangements.js";
import { answerLeaves } from "../properties/working/answerLeaves.js";
import { faultsOf } from "../properties/working/faultsOf.js";
import { filtersIn } from "../properties/working/filtersIn.js";
import { sampled } from "../properties/working/sampled.js";

// What tests/properties/working asks of every demonstration, asked of one or two, so that a mutant need not wait for all.

const catalogue = demoElements("elements.csv");
const money = { labourRate: 60, stoppage: 2000 };

function ofQuestion(question: WorkedQuestion, system: System, json: object): string[] {
  return faultsOf(sampled(answerLeaves(json, 1000)), {
    leafOf: (path) => leafAt(question, json, path, { ownTemperature: true }),
    workingOf: (leaf) => workingOf(system, leaf.figure, leaf.asked),
  });
}

function ofChoice(choice: Choice, json: object): string[] {
  return faultsOf(sampled(answerLeaves(json, 1)), {
    leafOf: (path) => leafAt(choice.question, json, path),
    workingOf: (leaf) => choiceWorking(choice, leaf),
  });
}

test.each(["pickup-staged", "lorry", "dewatering-paper", "generator-soiled"])("check and life of %s", (name) => {
  const system = demoSystem(name);
  expect(ofQuestion("check", system, checkJson(check(system)))).toEqual([]);
  expect(ofQuestion("life", system, lifeJson({ ...life(system), spread: null }))).toEqual([]);
});

test.each(["pickup-staged", "heron"])("card of %s", (name) => {
  const system = demoSystem(name);
  const answer = card(system);
  expect(ofChoice(cardChoice(system, answer), cardJson(answer))).toEqual([]);
});

test.each(["pickup-staged"])("remedy of %s", (name) => {
  const system = demoSystem(name);
  const answer = remedy(system);
  expect(ofChoice(remedyChoice(system, answer, {}), remedyJson(answer))).toEqual([]);
});

test.each(["pickup-staged"])("swap in %s", (name) => {
  const system = demoSystem(name);
  const at = filtersIn(system)[0] ?? "";
  const options = { ...money, draws: 4, fitted: fittedFrom(asFitted(system, at).filter, catalogue) };
  const given = { at, with: catalogue[1] as (typeof catalogue)[number] };
  expect(ofChoice(swapChoice(system, given, options), swapJson(swap(system, given, options)))).toEqual([]);
});

test.each(["pickup-single"])("size of %s", (name) => {
  const system = demoSystem(name);
  const elements = catalogue.filter((_, at) => at % 5 === 0);
  const options = { ...money, interval: 3600 * 100, bores: [0.008, 0.012], parallel: 2, keep: 2 };
  const steps = sizeSteps(system, elements, options);
  let step = steps.next();
  while (!step.done) step = steps.next();
  const answer: SizeAnswer = step.value;
  expect(ofChoice(sizeChoice(system, elements, answer, options), sizeJson(answer))).toEqual([]);
});

test.each(["high-when-new", "wax", "air", "jump", "loading"])("gauge of heron by %s", (name) => {
  const file = `heron-${name}.csv`;
  const system = demoSystem("heron");
  const read = readReadings(readFileSync(new URL(`../../packages/spec/demo/readings/${file}`, import.meta.url)), {
    file,
  });
  if ("faults" in read) throw new Error(`${file} cannot be read`);
  const answer = gauge(system, read.readings);
  const json = gaugeJson(answer);
  const choice = gaugeChoice(system, read.readings, answer, {});
  const faults = faultsOf(sampled(answerLeaves(json, 1000)), {
    leafOf: (path) => leafAt("gauge", json, path),
    workingOf: (leaf) => gaugeWorking(choice, leaf),
  });
  expect(faults).toEqual([]);
});
