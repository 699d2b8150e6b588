import type { CatalogueElement, System } from "@thirstline/spec/system";
import {
  arrangedSystem,
  asFitted,
  type CardOptions,
  card,
  cardNames,
  fittedFrom,
  lifeDraws,
  remedy,
  type SwapOptions,
  sizeSteps,
  spreadOf,
  swap,
  withChances,
} from "@thirstline/study";
import {
  type Choice,
  cardChoice,
  choiceWorking,
  leafAt,
  remedyChoice,
  type SizeAsked,
  sizeChoice,
  swapChoice,
} from "@thirstline/study/working";
import { afterAll, expect, test } from "vitest";
import { cardJson } from "../../../packages/cli/src/json/cardJson.js";
import { remedyJson } from "../../../packages/cli/src/json/remedyJson.js";
import { sizeJson } from "../../../packages/cli/src/json/sizeJson.js";
import { swapJson } from "../../../packages/cli/src/json/swapJson.js";
import { demoElements } from "../choose/arrangements.js";
import { answerLeaves } from "./answerLeaves.js";
import { faultsOf, tally } from "./faultsOf.js";
import { filtersIn } from "./filtersIn.js";
import { LONG, sampled } from "./sampled.js";
import { systemsIn } from "./systems.js";

const demos = systemsIn("demo");
const catalogue = demoElements("elements.csv");
const money = { labourRate: 60, stoppage: 2000 };
const costs = { "wider bore": 40, "warmer fuel": 300, "lower pump": 90 };

/** Faults of the workings of an answer as JSON, one figure of each kind. */
function faults(choice: Choice, json: object, kindOf?: Parameters<typeof sampled>[1]): string[] {
  return faultsOf(sampled(answerLeaves(json, 1), kindOf), {
    leafOf: (path) => leafAt(choice.question, json, path),
    workingOf: (leaf) => choiceWorking(choice, leaf),
  });
}

afterAll(() => {
  if (process.env.THIRSTLINE_TALLY === "1")
    console.log(`${tally.figures} figures compared; largest disagreement ${tally.largest}`);
});

for (const { name, system } of demos) {
  test(`every figure of remedy has a working that comes out: ${name}`, { timeout: 600_000 }, () => {
    const answer = remedy(system, { costs });
    const kindOf = ({ path }: { readonly path: readonly (string | number)[] }) => {
      const [list, at, field] = path;
      const results = list === "single" || list === "pairs" ? answer[list] : [];
      // Every kind of change for what the change itself carries; of what it comes to, one each.
      return field === "changes" ? (results[Number(at)]?.changes.map(({ kind }) => kind).join() ?? "") : "";
    };
    expect(faults(remedyChoice(system, answer, { costs }), remedyJson(answer), kindOf)).toEqual([]);
  });

  test(`every figure of card has a working that comes out: ${name}`, { timeout: 600_000 }, () => {
    const names = cardNames(system);
    const questions: CardOptions[] = [
      {},
      { at: names.slice(0, 1), temperature: system.temperature + 3, primer: 1.2e-5 },
    ];
    for (const options of names.length === 0 ? [{}] : questions) {
      const answer = card(system, options);
      expect(faults(cardChoice(system, answer, options), cardJson(answer))).toEqual([]);
    }
  });

  test(`every figure of swap has a working that comes out: ${name}`, { timeout: 600_000 }, () => {
    const places = [...new Set(filtersIn(system))];
    const others = LONG ? catalogue : catalogue.slice(1, 2);
    for (const at of LONG ? places : places.slice(0, 1)) {
      const options: SwapOptions = {
        ...money,
        draws: 10,
        fitted: fittedFrom(asFitted(system, at).filter, catalogue),
        rating: { beta: 200, size: 4e-6 },
      };
      for (const element of others) {
        const given = { at, with: { ...element, mostFlow: 1e-9 } };
        expect(faults(swapChoice(system, given, options), swapJson(swap(system, given, options)))).toEqual([]);
      }
    }
  });

  test(`every figure of size has a working that comes out: ${name}`, { timeout: 600_000 }, () => {
    const elements = LONG ? catalogue : catalogue.filter((_, at) => at % 5 === 0);
    const asked = { interval: 3600 * 100, rating: { beta: 1.5, size: 30e-6 }, bores: [0.008, 0.012] };
    for (const more of LONG ? [{}, asked] : [asked]) {
      const options: SizeAsked = { ...money, ...more, parallel: 2, keep: 2, draws: 10, seed: 3 };
      expect(faults(...searched(system, elements, options))).toEqual([]);
    }
  });
}

/** A search with the lives of its first arrangements drawn. */
function searched(system: System, elements: readonly CatalogueElement[], options: SizeAsked): [Choice, object] {
  const steps = sizeSteps(system, elements, options);
  let step = steps.next();
  while (!step.done) step = steps.next();
  let answer = step.value;
  const { interval } = answer.asked;
  const { draws = 10, seed = 1, stoppage = null } = options;
  if (interval !== null) {
    const spreads = answer.arrangements.slice(0, 1).map((one, at) => {
      const lives = lifeDraws(arrangedSystem(system, elements, answer.side, one), { from: 0, to: draws, seed });
      return [at, spreadOf(lives, { time: interval, atMost: 0 })] as const;
    });
    answer = withChances(answer, new Map(spreads), stoppage);
  }
  return [sizeChoice(system, elements, answer, options), sizeJson(answer)];
}
