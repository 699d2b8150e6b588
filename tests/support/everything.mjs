// All that has to hold before a change is taken in. A failure does not stop the rest, so that one run shows every fault.
import { run } from "./run.mjs";

const tests = "vitest run --reporter=default --reporter=json --outputFile.json=reports/vitest.json";

const outcomes = [
  ...(await Promise.all([
    run("build and types", "npm run --silent build"),
    run("lint", "npm run --silent lint"),
    run("page", "npm run --silent build:page"),
  ])),
  ...(await Promise.all([
    run("tests", tests, { show: true }),
    run("packages", "npm run --silent lint:packages"),
    run("docs", "npm run --silent docs"),
  ])),
];

process.exitCode = outcomes.every(Boolean) ? 0 : 1;
