import { type Formula, formula } from "../Formula.js";
import { fits } from "./loadingFits.js";
import { pairRatios, ratios } from "./loadingRatios.js";

/** A law of soil in kilograms told in a load of its own, of which 1 makes four times clean by one constant alone. */
function byLoad<Letter extends string>(own: Formula<Letter>): Formula<Letter> {
  const symbols = Object.entries<Formula["symbols"][string]>(own.symbols).map(([letter, symbol]) => [
    letter,
    letter === "r" ? symbol : { ...symbol, meaning: meanings[letter] ?? symbol.meaning, unit: "1", kind: "plain" },
  ]);
  const { letter } = own.result;
  const result = letter === "r" ? own.result : { ...own.result, unit: "1", kind: "plain" as const };
  return {
    ...own,
    id: `gauge-${own.id}`,
    name: `${own.name}, by load`,
    symbols: Object.fromEntries(symbols) as Formula<Letter>["symbols"],
    result,
  };
}

const meanings: Readonly<Record<string, string>> = { m: "load over that which makes four times clean" };

function allByLoad<Own extends Readonly<Record<string, Formula>>>(own: Own): Own {
  return Object.fromEntries(Object.entries(own).map(([name, one]) => [name, byLoad(one)])) as Own;
}

/** Resistance of each law at a load. */
export const loadRatios = allByLoad(ratios);
export const loadPairRatios = allByLoad(pairRatios);
/** The constant of each law by which a load of 1 makes four times clean. */
export const fullConstants = allByLoad(fits);

const mix = {
  symbols: {
    x: ["part of the second constant", "1"],
    K: ["constant that makes four times clean by itself", "1"],
  },
  result: ["A", "constant of the law, by load", "1"],
  holds: "a law of two constants, tried at three mixes",
  accuracy: "no gauge tells finer mixes apart",
  source: "common practice, no source",
} as const;

/** The constants of a law of two. */
export const firstOfMix = formula({
  id: "gauge-first-of-mix",
  name: "First constant of a mixed law",
  text: "(1 - x) * K",
  ...mix,
});
export const secondOfMix = formula({
  id: "gauge-second-of-mix",
  name: "Second constant of a mixed law",
  text: "x * K",
  ...mix,
});
