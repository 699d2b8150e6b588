import fc from "fast-check";

// Every property draws the same cases each time it runs, so that a change is judged by what it changed. To hunt for new
// ones: PROPERTY_SEED=n, and for tests/properties at its top level PROPERTY_RUNS=k for k times as many.
fc.configureGlobal({ seed: Number(process.env.PROPERTY_SEED ?? 20261125) });
