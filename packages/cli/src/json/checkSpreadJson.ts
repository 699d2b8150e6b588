import type { CheckSpread, Quantiles } from "@thirstline/study";
import { figure } from "./figure.js";

/** What draws make of one temperature's answer: the values that 10, 50 and 90 % of them stay below. */
export function checkSpreadJson({ vacuum, feedPressure, inHand, broken, draws }: CheckSpread) {
  const quantiles = ({ low, middle, high }: Quantiles, unit: string, reason: string) => ({
    low: figure(low, unit, reason),
    middle: figure(middle, unit, reason),
    high: figure(high, unit, reason),
  });
  return {
    vacuum: quantiles(vacuum, "Pa", "shut"),
    feedPressure:
      feedPressure === null
        ? figure(null, "Pa", "not known for this pump, or shut")
        : quantiles(feedPressure, "Pa", "shut"),
    inHand: quantiles(inHand, "1", "demand does not touch the limit"),
    broken: broken && {
      chance: figure(broken.chance, "1", "not known"),
      chanceError: figure(broken.chanceError, "1", "not known"),
    },
    draws: figure(draws, "1", "none"),
  };
}
