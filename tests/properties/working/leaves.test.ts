import type { System } from "@thirstline/spec/system";
import {
  check,
  checkDraws,
  checkSpreadOf,
  curve,
  curveDraws,
  curveSpreadOf,
  isSuctionUncertain,
  isUncertain,
  life,
  lifeDraws,
  spreadOf,
} from "@thirstline/study";
import { type Asked, choiceLeaves, leafAt, leavesOf, type WorkedQuestion, workingOf } from "@thirstline/study/working";
import { expect, test } from "vitest";
import { checkJson } from "../../../packages/cli/src/json/checkJson.js";
import { curveJson } from "../../../packages/cli/src/json/curveJson.js";
import { lifeJson } from "../../../packages/cli/src/json/lifeJson.js";
import { type AnswerLeaf, answerLeaves } from "./answerLeaves.js";
import { faultsOf } from "./faultsOf.js";
import { LONG, sampled } from "./sampled.js";
import { systemsIn } from "./systems.js";

/** The draws asked for; as many as show every figure, and no more. */
const DRAWS = LONG ? 30 : 10;
const POINTS = 21;
const slice = { from: 0, to: DRAWS, seed: 1 };

/** What a command answers as JSON, with its spread where the file has one. */
const answers: Readonly<Record<WorkedQuestion, (system: System, temperatures: number[]) => object>> = {
  check: (system, temperatures) => {
    const options = temperatures.length === 0 ? {} : { temperatures };
    const answer = check(system, options);
    const spreads = isSuctionUncertain(system)
      ? checkSpreadOf(checkDraws(system, options, slice), answer.points.length)
      : [];
    return checkJson(answer, spreads);
  },
  curve: (system, temperatures) => {
    const answer = curve(system, { ...(temperatures.length === 0 ? {} : { temperatures }), points: POINTS });
    if (!isSuctionUncertain(system)) return curveJson(answer);
    const spreads = answer.points.flatMap(({ temperature, demand }) => {
      const asked = temperatures.length === 0 ? {} : { temperatures: [temperature] };
      const options = { ...asked, to: demand.at(-1) ?? 0, points: POINTS };
      return curveSpreadOf(curveDraws(system, options, slice), 1, POINTS);
    });
    return curveJson(answer, spreads);
  },
  life: (system) => {
    const answer = life(system);
    const spread =
      isUncertain(system) && answer.horizon > 0 ? spreadOf(lifeDraws(system, slice), answer.interval) : null;
    return lifeJson({ ...answer, spread });
  },
};

/** Every fault of the workings of an answer: a figure without one, another figure, or a formula that does not come out. */
function faults(question: WorkedQuestion, system: System, temperatures: number[]): string[] {
  const more: Asked = { draws: DRAWS, points: POINTS };
  const answer = answers[question](system, temperatures);
  // Columns are read at some places; in a short run figures of one kind are told apart by what they are of.
  const leaves = answerLeaves(answer, LONG ? (question === "life" ? 25 : 7) : 1000);
  const ownTemperature = temperatures.length === 0;
  const leafOf = (path: AnswerLeaf["path"]) => leafAt(question, answer, path, { ownTemperature });
  return faultsOf(sampled(leaves), {
    leafOf,
    workingOf: (leaf) => workingOf(system, leaf.figure, { ...leaf.asked, ...more }),
  });
}

const demos = systemsIn("demo");
const others = systemsIn("files");

test("the files read hold every kind of pump, several tanks, bands, spreads and soil", () => {
  expect(demos.length).toBeGreaterThanOrEqual(15);
  expect(others.length).toBeGreaterThanOrEqual(5);
});

test("the commands whose figures all have a working are these", () => {
  expect(Object.keys(leavesOf)).toEqual(["check", "curve", "life"]);
  expect(Object.keys(choiceLeaves)).toEqual(["swap", "size", "remedy", "card"]);
});

for (const { name, system } of LONG ? [...demos, ...others] : demos) {
  test(`every figure of check, curve and life has a working that comes out: ${name}`, { timeout: 600_000 }, () => {
    expect(faults("check", system, [])).toEqual([]);
    if (LONG) expect(faults("check", system, [system.temperature - 20])).toEqual([]);
    expect(faults("curve", system, [])).toEqual([]);
    expect(faults("life", system, [])).toEqual([]);
  });
}
