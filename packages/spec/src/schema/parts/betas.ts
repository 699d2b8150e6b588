import type { z } from "zod";
import { shown } from "../../shown.js";
import type { SystemBeta } from "../../system/Filter.js";
import { also, type Report } from "../also.js";
import { block } from "../block.js";
import { type Leaf, leaf } from "../leaf.js";
import { measured } from "../leaves/index.js";
import { list } from "../list.js";

/** A beta ratio, also with a leading > or >= as test sheets print it: "more than 1000" counts as 1000. */
function betaRatio(): Leaf<number> {
  const right = "write a beta ratio, 1 to 1000000, such as 75";
  const json = {
    anyOf: [
      { type: "number", minimum: 1, maximum: 1e6 },
      { type: "string", pattern: "^>=? ?[0-9]+$" },
    ],
    description: 'a beta ratio; "> 1000" counts as 1000',
  };
  return leaf("a beta ratio such as 75", json, Number.NaN, (value) => {
    const atLeast = typeof value === "string" ? /^(?:>=?|≥) ?(\d{1,7})$/.exec(value) : null;
    const beta = atLeast === null ? value : Number(atLeast[1]);
    if (typeof beta !== "number" || Number.isNaN(beta)) {
      return { fault: { code: "not a number", message: `${shown(value)} is not a beta ratio; ${right}` } };
    }
    if (beta >= 1 && beta <= 1e6) return { value: beta };
    const reason = beta < 1 ? "fewer particles came in than went out" : "no test can show so much";
    return { fault: { code: "out of range", message: `${shown(value)} is no beta ratio: ${reason}; ${right}` } };
  });
}

/** Beta ratios of an element by size, as a file has them. */
export const betaList = also(
  list(
    "a list of beta ratios",
    "[{ size: 10 um, beta: 2 }, { size: 25 um, beta: 75 }]",
    block("a beta ratio at a size", "{ size: 10 um, beta: 75 }", { size: measured("betaSize"), beta: betaRatio() }),
    { least: 1, most: 20, of: "beta ratio" },
  ),
  (betas, report) => checkRising(betas as BetaData, report),
);

type BetaData = z.output<typeof betaList>;

function checkRising(betas: BetaData, report: Report): void {
  const order = betas.map((_, at) => at).filter((at) => typeof betas[at] === "object");
  order.sort((left, right) => (betas[left]?.size ?? 0) - (betas[right]?.size ?? 0));
  order.forEach((at, place) => {
    const [here, before] = [betas[at], betas[order[place - 1] ?? -1]];
    if (here === undefined || before === undefined) return;
    if (here.size === before.size)
      report([at, "size"], "same size", "this size has a beta ratio already; leave one out");
    else if (here.beta < before.beta) {
      const message = `less than the beta of a smaller size (${before.beta}); a filter holds large particles at least as well`;
      report([at, "beta"], "beta falls", message);
    }
  });
}

/** Beta ratios in SI, by rising size. */
export function toBetas(betas: BetaData): SystemBeta[] {
  return betas.map(({ size, beta }) => ({ size, beta })).sort((left, right) => left.size - right.size);
}
