import { target } from "./target.mjs";

const reports = "reports/mutation";

export default {
  testRunner: "in-process",
  plugins: ["./tests/mutation/runner.mjs"],
  buildCommand: "node tests/mutation/bundle.mjs",
  mutate: [target.sources, "!**/*.test.ts", "!**/index.ts"],
  ignorePatterns: ["reports", "packages/*/dist"],
  coverageAnalysis: "perTest",
  ignoreStatic: true,
  concurrency: 2,
  // The tests' own time is measured before the engine is warm, which is allowance enough.
  timeoutFactor: 1,
  timeoutMS: 10_000,
  incremental: true,
  incrementalFile: `${reports}/${target.name}-incremental.json`,
  reporters: ["clear-text", "json", "progress-append-only"],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  jsonReporter: { fileName: `${reports}/${target.name}.json` },
  // Some of what survives cannot be noticed (equivalent.md), most of it in circuit; below this something has gone untested.
  thresholds: { high: 95, low: 90, break: 80 },
  tempDirName: `${reports}/tmp-${target.name}`,
};
