import type { CatalogueElement, System } from "@thirstline/spec/system";
import { arrangedSystem } from "../../choose/sizing/arrangedSystem.js";
import type { Arrangement, SizeAnswer } from "../../choose/sizing/SizeAnswer.js";
import type { Choice, Variant } from "./Choice.js";
import type { SizeAsked, SizeGiven } from "./SizeGiven.js";
import { searchFigures } from "./searchFigures.js";
import { arrangementOwn, nearestOwn, stageFigures } from "./sizeFigures.js";

/**
 * What an answer to `size` compares: "search", the search itself; every arrangement by its place in the answer,
 * "arrangement 0"; of those that fail an example of each kind, "failed 0"; and "nearest". The figures of an arrangement are
 * those of `check` and `life` with it put in.
 *
 * @param elements the catalogue that was searched
 * @param options as the answer was asked with, and its lives drawn
 */
export function sizeChoice(
  system: System,
  elements: readonly CatalogueElement[],
  answer: SizeAnswer,
  options: SizeAsked = {},
): Choice {
  const given = { file: system, elements, answer, options };
  const put = (one: Pick<Arrangement, "stages" | "bore">): Omit<Variant, "own"> => {
    const { draws = 400, seed = 1 } = options;
    return { system: withInterval(given, one), change: changeOf(one), asked: { draws, seed } };
  };
  const variants: [string, Variant][] = [
    ["search", { system, change: null, asked: {}, own: searchFigures(given) }],
    ...answer.arrangements.map((one, at): [string, Variant] => {
      const variant = put(one);
      return [`arrangement ${at}`, { ...variant, own: arrangementOwn(given, variant, one) }];
    }),
    ...answer.failed.map(({ example, count }, at): [string, Variant] => {
      const own = stageFigures(given, example, count);
      return [`failed ${at}`, { system, change: null, asked: {}, own }];
    }),
  ];
  const { nearest } = answer;
  if (nearest) {
    const variant = put(nearest);
    variants.push(["nearest", { ...variant, own: nearestOwn(given, variant, nearest) }]);
  }
  return { question: "size", file: system, variants: new Map(variants) };
}

/** With an arrangement put in, and the interval asked for as its own. */
function withInterval({ file, elements, answer }: SizeGiven, one: Pick<Arrangement, "stages" | "bore">): System {
  const put = arrangedSystem(file, elements, answer.side, one);
  const { interval } = answer.asked;
  if (interval === null || interval === put.service?.interval) return put;
  return { ...put, service: { ...put.service, interval } };
}

function changeOf({ stages, bore }: Pick<Arrangement, "stages" | "bore">): string {
  const words = stages.map(({ element, count }) => `${count} × "${element}"`).join(", then ");
  return `the arrangement of ${words}${bore === null ? "" : " with other lines"}`;
}
