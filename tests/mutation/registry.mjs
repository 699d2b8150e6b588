import { format } from "node:util";
import { vi, expect as vitestExpect } from "vitest";

// Stands in for "vitest" in the bundle: keeps the tests in a list instead of running them, so that one process can run any of
// them again and again, a mutant at a time. Only what our tests use is here; the assertions are Vitest's own.

/** @typedef {{ id: string; run: () => unknown }} Kept */

/** @type {Kept[]} */
export const tests = [];
/** @type {Map<string, number>} */
const seen = new Map();
/** @type {string[]} */
const around = [];

/** @typedef {(name: string, run: () => unknown) => void} Named */
/** @typedef {(name: string, ...rest: unknown[]) => void} Test a test's options may stand between its name and itself */

/**
 * @param {readonly unknown[]} rest
 * @returns {(...args: unknown[]) => unknown}
 */
const runIn = (rest) => /** @type {() => unknown} */ (rest.find((each) => typeof each === "function"));

/** @type {Test} */
const one = (name, ...rest) => {
  const run = runIn(rest);
  const full = [...around, name].join(" ");
  const before = seen.get(full) ?? 0;
  seen.set(full, before + 1);
  tests.push({ id: before === 0 ? full : `${full} (${before + 1})`, run });
};

/** @type {Named} */
const several = (name, run) => {
  around.push(name);
  run();
  around.pop();
};

/**
 * @param {Named} once
 * @returns {(cases: readonly unknown[]) => Test}
 */
const eachOf =
  (once) =>
  (cases) =>
  (name, ...rest) => {
    const run = runIn(rest);
    for (const given of cases) {
      const args = Array.isArray(given) ? given : [given];
      const wanted = name.match(/%[sdifjoO]/g)?.length ?? 0;
      once(format(name, ...args.slice(0, wanted)), () => run(...args));
    }
  };

export const test = Object.assign(one, { each: eachOf(one) });
export const describe = Object.assign(several, { each: eachOf(several) });

/** @param {() => void} _ nothing a mutant's test leaves behind needs clearing up */
export const afterAll = (_) => {};

/** @type {(value: unknown, message?: string) => unknown} */
const hard = (value, message) => vitestExpect(value, message);
// A soft expectation goes on to the next one; here the first that fails is enough.
export const expect = Object.assign(hard, vitestExpect, { soft: hard });

export { vi };
