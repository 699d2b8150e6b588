import fc from "fast-check";

// Stands in for "fast-check" in the bundle: the first few random cases find nearly every mutant that thousands would, and
// nothing is gained from the smallest case that fails.
const SHARE = 0.05;

/**
 * @param {import("fast-check").IProperty<unknown>} property
 * @param {import("fast-check").Parameters<unknown>} [params]
 */
const assert = (property, params = {}) =>
  fc.assert(property, {
    ...params,
    numRuns: Math.ceil((params.numRuns ?? fc.readConfigureGlobal().numRuns ?? 100) * SHARE),
    endOnFailure: true,
  });

export default { ...fc, assert };
