import { resolve } from "node:path";
import { pathToFileURL } from "node:url";
import { bundle } from "./target.mjs";

// Stryker's own runner for Vitest loads every module again for each mutant, 1.3 s of work; here the bundle is loaded once and
// a mutant costs only the tests that reach it. Mutants in code that runs on loading alone are left out (`ignoreStatic`).

/** @typedef {import("./registry.mjs").Kept} Kept */

/**
 * What the planted code and we tell each other.
 * @typedef {{
 *   activeMutant?: string | undefined; currentTestId?: string | undefined; mutantCoverage?: unknown;
 *   hitCount?: number | undefined; hitLimit?: number | undefined;
 * }} Planted
 */

/** Stryker's word for a test that passed, and for one that failed. */
const PASSED = 0;
const FAILED = 1;

class InProcessRunner {
  #planted = planted();
  /** @type {Kept[]} */
  #tests = [];
  /**
   * What each test took when it last passed, ms.
   * @type {Map<Kept, number>}
   */
  #cost = new Map();

  capabilities() {
    // Without this Stryker starts a new process for each mutant that loading reaches too; its tests see it without.
    return { reloadEnvironment: true };
  }

  async init() {
    this.#tests = (await import(pathToFileURL(resolve(bundle)).href)).tests;
  }

  /** Every test without a mutant: what it reaches, and how long it takes. */
  async dryRun() {
    const tests = [];
    for (const test of this.#tests) {
      this.#planted.currentTestId = test.id;
      const start = performance.now();
      const failureMessage = await failureOf(test);
      this.#planted.currentTestId = undefined;
      const said = { id: test.id, name: test.id, timeSpentMs: performance.now() - start };
      tests.push(
        failureMessage === undefined ? { ...said, status: PASSED } : { ...said, status: FAILED, failureMessage },
      );
    }
    return { status: "complete", tests, mutantCoverage: this.#planted.mutantCoverage };
  }

  /**
   * The tests that reach a mutant, until one fails.
   * @param {{ activeMutant: { id: string }; testFilter?: string[]; hitLimit?: number }} asked
   */
  async mutantRun({ activeMutant, testFilter, hitLimit = Infinity }) {
    const wanted = new Set(testFilter);
    // The first that fails is enough, so the quickest come first.
    const tests = this.#tests.filter(({ id }) => testFilter === undefined || wanted.has(id));
    tests.sort((left, right) => (this.#cost.get(left) ?? 0) - (this.#cost.get(right) ?? 0));
    // Stryker allows a hundred times as many as all the tests need; in the inner loops that takes half a minute, and ten do.
    const limit = Math.max(hitLimit / 10, Math.min(hitLimit, 1e6));
    Object.assign(this.#planted, { hitCount: 0, hitLimit: limit, activeMutant: activeMutant.id });
    let nrOfTests = 0;
    for (const test of tests) {
      nrOfTests++;
      const start = performance.now();
      const failureMessage = await failureOf(test);
      if ((this.#planted.hitCount ?? 0) > limit) return { status: "timeout", reason: "met far too often" };
      if (failureMessage !== undefined) return { status: "killed", killedBy: [test.id], failureMessage, nrOfTests };
      this.#cost.set(test, performance.now() - start);
    }
    return { status: "survived", nrOfTests };
  }
}

/** @returns {Planted} */
function planted() {
  const all = /** @type {{ __stryker__?: Planted }} */ (globalThis);
  all.__stryker__ ??= {};
  return all.__stryker__;
}

/** @param {Kept} test */
async function failureOf(test) {
  try {
    await test.run();
    return undefined;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

export const strykerPlugins = [{ kind: "TestRunner", name: "in-process", injectableClass: InProcessRunner }];
