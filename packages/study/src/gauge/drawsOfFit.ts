import { devianceOf, type Fitted, type Weighed } from "./fitAll.js";
import { standardDeviates } from "./standardDeviates.js";

/** Parameters that a run allows, with how likely they are among the draws. */
export interface Draw {
  readonly parameters: readonly number[];
  readonly weight: number;
}

/** Draws of one fitted model. */
const DRAWS = 160;
/** Freedom of the distribution drawn from: its tails are wider than any that is wanted, so no corner is missed. */
const FREEDOM = 5;

/**
 * What a fitted model's parameters may be, given the readings: drawn from Student's distribution about the fit and weighed by
 * the likelihood over the density drawn from (importance sampling), so that a curved or lopsided spread comes out as it is.
 *
 * Parameters are the file's own errors (with what is known of them beforehand) and the logarithms of the soil's resistance;
 * nothing is known of those beforehand.
 */
export function drawsOfFit(weighed: Weighed, { model, fit }: Fitted, seed: number): Draw[] {
  const root = rootOf(fit.covariance);
  const count = fit.parameters.length;
  if (root === null) return [{ parameters: fit.parameters, weight: 1 }];
  const { misses } = model.problem(weighed.sigmas, [fit.parameters]);
  const logs: { readonly parameters: readonly number[]; readonly log: number }[] = [];
  for (const deviates of standardDeviates(seed, count, FREEDOM, DRAWS)) {
    const parameters = fit.parameters.map((value, at) => {
      const row = root[at] as readonly number[];
      let moved = value;
      for (let place = 0; place <= at; place++) moved += (row[place] as number) * (deviates[place] as number);
      return moved;
    });
    const found = misses(parameters);
    let sum = 0;
    for (let at = 0; at < weighed.sigmas.length; at++) sum += (found[at] as number) ** 2;
    const distance = deviates.reduce((total, one) => total + one * one, 0);
    const drawn = (-(FREEDOM + count) / 2) * Math.log1p(distance / FREEDOM);
    const log = -devianceOf(weighed, sum, parameters) / 2 - drawn;
    if (Number.isFinite(log)) logs.push({ parameters, log });
  }
  const most = Math.max(...logs.map(({ log }) => log));
  const total = logs.reduce((sum, { log }) => sum + Math.exp(log - most), 0);
  return logs.map(({ parameters, log }) => ({ parameters, weight: Math.exp(log - most) / total }));
}

/** Lower triangle whose product with itself is a covariance; null where it is none. */
function rootOf(covariance: readonly (readonly number[])[]): number[][] | null {
  const root: number[][] = [];
  for (const [at, row] of covariance.entries()) {
    const own: number[] = [];
    for (let place = 0; place <= at; place++) {
      const other = place === at ? own : (root[place] as number[]);
      let left = row[place] as number;
      for (let inner = 0; inner < place; inner++) left -= (own[inner] as number) * (other[inner] as number);
      if (place < at) own.push(left / (other[place] as number));
      else if (left > 0) own.push(Math.sqrt(left));
      else return null;
    }
    root.push(own);
  }
  return root;
}
