import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, expect, test } from "vitest";
import measured from "../../playground/src/working/accuracy.json";
import { readTable } from "../support/table.js";

const script = fileURLToPath(new URL("../support/accuracy.mjs", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "accuracy-"));

afterAll(() => rmSync(folder, { recursive: true }));

const printed = () => spawnSync(process.execPath, [script, folder], { encoding: "utf8" });

test("the accuracy report fails when nothing was measured", () => {
  const { status, stderr } = printed();
  expect(status).toBe(1);
  expect(stderr).toBe(`nothing measured yet: ${folder} holds no reports; run the tests first\n`);
});

test("the accuracy report writes nothing to the page from a part of the measurements", () => {
  const page = new URL("../../playground/src/working/accuracy.json", import.meta.url);
  const before = readFileSync(page, "utf8");
  const entry = { name: "lines/b", kind: "", status: "", table: "", as: "relative", n: 1, mean: 0, p90: 0, max: 0 };
  writeFileSync(join(folder, "b.json"), JSON.stringify(entry));
  const { status, stderr } = spawnSync(process.execPath, [script, folder, "--page"], { encoding: "utf8" });
  expect(status).toBe(1);
  expect(stderr).toContain(`${folder} lacks ${measured.length} measurements, ${measured[0]?.name} among them`);
  expect(readFileSync(page, "utf8")).toBe(before);
});

test("the accuracy report prints one line a table, by name, the sum, and where each table comes from", () => {
  const write = (name: string, entry: object) => writeFileSync(join(folder, `${name}.json`), JSON.stringify(entry));
  const kind = "independent arithmetic (checks the code, not the physics)";
  const [smooth, points] = ["lines/smooth-pipe.csv", "colebrook/colebrook-12.csv"];
  const status = "computed";
  write("b", {
    name: "lines/b",
    kind,
    status,
    table: points,
    as: "relative",
    n: 45,
    mean: 1.23e-16,
    p90: 0,
    max: 4e-15,
  });
  // JSON turns Infinity, which a missing answer counts as, into null.
  const missing = { n: 7, mean: 0.5, p90: 0.912, max: Infinity };
  write("a", { name: "lines/a", kind: "worked example", status: "seen", table: smooth, as: "half steps", ...missing });
  const { status: exit, stdout } = printed();
  expect(exit).toBe(0);
  expect(stdout.split("\n")).toEqual([
    "table    rows  error in       mean  90 %        max  kind",
    "-------  ----  ----------  -------  ----  ---------  ----------------------",
    "lines/a     7  half steps     0.50  0.91  no answer  worked example",
    "lines/b    45  relative    1.2e-16     0    4.0e-15  independent arithmetic",
    "",
    "52 figures checked in 2 measurements. In half steps, 1 is the rounding of the printed figure.",
    "",
    "Where each comes from, and how sure that is:",
    "",
    `lines/a: seen. Source: ${readTable(smooth).header.source}`,
    `lines/b: computed. Source: ${readTable(points).header.source}`,
    "",
  ]);
});

test("150 measurements and more are kept for the page, each with mean, 90 %, largest, source and status", () => {
  expect(measured.length).toBeGreaterThanOrEqual(150);
  for (const one of measured) {
    expect(one.figures, one.name).toBeGreaterThan(0);
    for (const said of [one.mean, one.ninetyPercent, one.largest]) expect(said, one.name).toMatch(/^\d/);
    for (const said of [one.kind, one.source, one.status]) expect(said, one.name).not.toBe("");
  }
});
