import type { System } from "@thirstline/spec/system";
import { starvesBelow } from "../../choose/starvesBelow.js";
import type { Check, Step } from "../Step.js";
import { inWords, searched } from "../worked.js";
import { figureStep } from "./leastInHand.js";

/** How closely the temperature is found, K. */
const CLOSE = 0.005;

/** The temperature below which a system starves, or down to which it does not, with the check on both sides of it. */
export function starvesStep(system: System, warmest: number): Step {
  const { code, temperature: value } = starvesBelow(system, warmest);
  const plain = { name: "starves below", value, unit: "K", kind: "temperature" } as const;
  const none = inWords("a limit is only just met", {
    name: "nothing in hand",
    value: 0,
    unit: "1",
    kind: "ratio",
  });
  const inHand = (at: number, relation: Check["relation"], words: string): Check[] => {
    const left = figureStep(system, "in hand, low end", { temperature: at });
    return left ? [{ words, left, relation, right: none }] : [];
  };
  switch (code) {
    case "below":
      return searched("halved between a temperature that feeds it and one that starves it, to 0.005 K", plain, [
        ...inHand(value, ">=", "at this temperature it gets its fuel"),
        ...inHand(value - CLOSE, "<=", "0.005 K colder it starves"),
      ]);
    case "always":
      return searched("the warmest temperature asked for", plain, inHand(value, "<=", "even there it starves"));
    case "not above":
      return searched("the coldest fuel at which figures mean anything", plain, [
        ...inHand(value, ">=", "at this temperature it gets its fuel"),
        ...groundOf(system, plain, value),
      ]);
  }
}

/** What ends the fuel's figures there: its cloud point, or the end of its data. */
function groundOf(system: System, plain: Parameters<typeof inWords>[1], value: number): Check[] {
  const names = ["cloud point", "highest cloud point of its kind", "coldest fuel data"];
  const grounds = names.flatMap((name) => figureStep(system, name, { temperature: value }) ?? []);
  const own = grounds.find((step) => Math.abs(step.value - value) <= 2 * CLOSE);
  if (!own) return [];
  const words = "it is no colder than the fuel's figures hold";
  return [{ words, left: inWords("as found", plain), relation: ">=", right: own }];
}
