import { shown } from "../../shown.js";
import { spreadShare } from "../../units/spreadShare.js";
import { type Leaf, leaf } from "../leaf.js";
import { fault } from "./fault.js";

/** A share, 0 to 1, or in per cent with the sign, or the middle of its spread; NaN when it could not be read. */
export function share(words: string, example: string): Leaf<number> {
  const json = {
    anyOf: [
      { type: "number", minimum: 0, maximum: 1 },
      { type: "string", pattern: "^[0-9.]+ ?%?( to [0-9.]+ ?%)?$" },
    ],
    description: `${words}, such as "${example}"`,
  };
  const wanted = `${words} such as "${example}"`;
  const right = `write ${wanted}`;
  return leaf(wanted, json, Number.NaN, (given) => {
    const spread = typeof given === "string" ? spreadShare(given) : undefined;
    if (spread !== undefined) return spread;
    const percent = typeof given === "string" && given.length < 20 ? /^(\d+\.?\d*|\.\d+) ?%$/.exec(given) : null;
    const value = percent === null ? given : Number(percent[1]) / 100;
    if (typeof value !== "number" || Number.isNaN(value)) {
      return fault("not a share", `${shown(given)} is not a share; ${right}`);
    }
    if (value > 1 && percent === null && value <= 100) {
      return fault("no unit", `${shown(given)} is more than the whole; write it as "${value} %"`);
    }
    if (!(value >= 0 && value <= 1)) return fault("out of range", `${shown(given)} is not 0 to 100 %; ${right}`);
    return { value };
  });
}
