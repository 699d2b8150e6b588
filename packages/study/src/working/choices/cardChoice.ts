import { build, type System } from "@thirstline/spec/system";
import type { CardAnswer, CardDuplex } from "../../card/CardAnswer.js";
import type { CardOptions } from "../../card/card.js";
import { mapParts } from "../../choose/mapParts.js";
import { benchFigures } from "./benchFigures.js";
import type { Choice, Variant } from "./Choice.js";
import { nextFigures } from "./nextFigures.js";
import { volumeFigures } from "./volumeFigures.js";

/**
 * What a card's figures belong to: "fitted", the system with the elements changed, whose readings are `check`'s and whose
 * water is `life`'s; "lowest load", the same at the least load of the duty; and "duplex", the same with one side of a bank shut.
 *
 * @param options as `card` was asked with
 */
export function cardChoice(system: System, answer: CardAnswer, options: CardOptions = {}): Choice {
  const names = answer.elements.map(({ name }) => name);
  const fitted = mapParts(system, (part) => {
    if (part.part !== "filter" || !names.includes(part.name)) return part;
    const { restriction: _, ...clean } = part;
    return { ...clean, reversed: false };
  });
  const asked = options.temperature === undefined ? {} : { temperature: options.temperature };
  const temperature = options.temperature ?? build(system).temperature;
  const given = { system, fitted, answer, options, temperature };
  const own = [...volumeFigures(given), ...benchFigures(given), ...nextFigures(given)];
  const change = "the element changed for one like it";
  const variants: [string, Variant][] = [["fitted", { system: fitted, change, asked, own }]];
  const least = answer.readings.find(({ load }) => load < 1);
  if (least) {
    variants.push(["lowest load", { system: fitted, change, asked: { ...asked, demand: least.demand }, own: [] }]);
  }
  if (answer.duplex) {
    variants.push(["duplex", { system: turned(fitted, answer.duplex), change, asked, own: [] }]);
  }
  return { question: "card", file: system, variants: new Map(variants) };
}

function turned(fitted: System, { first, through, opened }: CardDuplex): System {
  return mapParts(fitted, (part) => {
    if (part.part !== "filter") return part;
    if (part.name === first) return { ...part, blocked: true };
    return opened && through.includes(part.name) ? { ...part, blocked: false } : part;
  });
}
