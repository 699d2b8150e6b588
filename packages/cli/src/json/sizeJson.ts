import type { Arrangement, SizeAnswer } from "@thirstline/study";
import { figure } from "./figure.js";
import { MONEY, plainJson, spreadJson } from "./swapJson.js";

const NO_LIMIT = "no limit is met within ten years of duty";
const count = (value: number) => figure(value, "1", "not known");
const stagesJson = (stages: Arrangement["stages"]) =>
  stages.map((stage) => ({ element: stage.element, count: count(stage.count) }));
const boreJson = (bore: number | null) => figure(bore, "m", "the file's own");

/** An answer to `size` for programs: SI, every figure with its unit; money in the catalogue's own currency. */
export function sizeJson(answer: SizeAnswer) {
  const { asked, arrangements, best } = answer;
  const place = (at: number | null) => (at === null ? null : arrangementJson(arrangements[at] as Arrangement));
  return {
    question: answer.question,
    system: answer.system,
    verdict: answer.verdict,
    reasons: answer.reasons.map((reason) => plainJson(reason, { temperature: "K", interval: "s", most: "s" })),
    side: answer.side,
    replaced: answer.replaced,
    asked: {
      code: asked.code,
      rating: asked.rating && { beta: count(asked.rating.beta), size: figure(asked.rating.size, "m", "not stated") },
      interval: figure(asked.interval, "s", "not stated"),
    },
    temperatures: answer.temperatures.map((one) => figure(one, "K", "not known")),
    candidates: count(answer.candidates),
    passing: count(answer.passing),
    best: { cost: place(best.cost), vacuum: place(best.vacuum), changes: place(best.changes) },
    arrangements: arrangements.map(arrangementJson),
    failed: answer.failed.map(({ by, count: many, example }) => ({
      by,
      count: count(many),
      example: { stages: stagesJson(example.stages), bore: boreJson(example.bore) },
    })),
    nearest: answer.nearest && {
      by: answer.nearest.by,
      stages: stagesJson(answer.nearest.stages),
      bore: boreJson(answer.nearest.bore),
      code: answer.nearest.code,
      inHand: figure(answer.nearest.inHand, "1", "demand does not touch the limit"),
      life: figure(answer.nearest.life, "s", NO_LIMIT),
    },
    effort: plainJson(answer.effort),
  };
}

function arrangementJson(one: Arrangement) {
  return {
    stages: stagesJson(one.stages),
    bore: boreJson(one.bore),
    elements: count(one.elements),
    changesAYear: count(one.changesAYear),
    yearlyCost: figure(one.yearlyCost, MONEY, "no price"),
    vacuum: figure(one.vacuum, "Pa", "not known"),
    code: one.code,
    ...(one.life === undefined ? {} : { life: figure(one.life, "s", NO_LIMIT) }),
    ...(one.spread === undefined ? {} : { spread: spreadJson(one.spread, NO_LIMIT) }),
    ...(one.stoppages === undefined ? {} : { stoppages: figure(one.stoppages, MONEY, "no cost of a stoppage stated") }),
    pareto: one.pareto,
  };
}
