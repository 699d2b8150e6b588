// Prints the totals of vitest's JSON report as one line. Fails when a test failed, when none ran, and without a report.
import { existsSync, readFileSync } from "node:fs";

const file = process.argv[2] ?? "";

/** @type {{ status: string, assertionResults: { status: string }[] }[]} */
const files = existsSync(file) ? JSON.parse(readFileSync(file, "utf8")).testResults : [];

const results = files.flatMap(({ status, assertionResults }) => {
  const own = assertionResults.map((test) => test.status);
  // A file that failed outside its tests, because it could not be loaded for instance, counts as one failure.
  return status === "failed" && !own.includes("failed") ? [...own, "failed"] : own;
});

const passed = results.filter((status) => status === "passed").length;
const failed = results.filter((status) => status === "failed").length;
const skipped = results.length - passed - failed;

console.log(`${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`);
process.exitCode = passed > 0 && failed === 0 ? 0 : 1;
