import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, expect, test } from "vitest";

const script = fileURLToPath(new URL("../support/totals.mjs", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "totals-"));

afterAll(() => rmSync(folder, { recursive: true }));

/** What the script prints and its exit code, for a report of files each given as its own status, then its tests'. */
function totals(...files: string[][]): { printed: string; code: number | null } {
  const report = join(folder, "report.json");
  const testResults = files.map(([status, ...tests]) => ({
    status,
    assertionResults: tests.map((status) => ({ status })),
  }));
  writeFileSync(report, JSON.stringify({ testResults }));
  return printedFor(report);
}

function printedFor(report: string): { printed: string; code: number | null } {
  const { stdout, status } = spawnSync(process.execPath, [script, report], { encoding: "utf8" });
  return { printed: stdout, code: status };
}

test("totals of passed tests succeed", () => {
  expect(totals(["passed", "passed", "passed"], ["passed", "passed"])).toEqual({
    printed: "3 passed, 0 failed\n",
    code: 0,
  });
});

test("totals name what was skipped, for whatever reason", () => {
  const expected = { printed: "1 passed, 0 failed, 3 skipped\n", code: 0 };
  expect(totals(["passed", "passed", "skipped", "pending", "todo"])).toEqual(expected);
});

test("totals with one failure fail", () => {
  expect(totals(["failed", "passed", "failed"])).toEqual({ printed: "1 passed, 1 failed\n", code: 1 });
});

test("totals count a file that could not be loaded as a failure", () => {
  expect(totals(["passed", "passed"], ["failed"])).toEqual({ printed: "1 passed, 1 failed\n", code: 1 });
});

test("totals of nothing fail", () => {
  expect(totals()).toEqual({ printed: "0 passed, 0 failed\n", code: 1 });
  expect(totals(["skipped", "skipped"])).toEqual({ printed: "0 passed, 0 failed, 1 skipped\n", code: 1 });
  expect(printedFor(join(folder, "none.json"))).toEqual({ printed: "0 passed, 0 failed\n", code: 1 });
});
