import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { figure } from "./accuracyFigure.mjs";

// Prints how well the library meets its published tables: `npm run accuracy` after the tests, which leave one file a table
// in reports/accuracy. Another folder may be named as an argument; `--readme` also writes README's table, which holds the
// tables that come from outside: what only checks arithmetic is left out there. `--page` writes the same figures, with where
// they come from, for the page's formulas.

/**
 * @typedef {{ name: string, kind: string, as: string, table: string, n: number, mean: number, p90: number, max: number }} Entry
 */

const toReadme = process.argv.includes("--readme");
const toPage = process.argv.includes("--page");
const folder =
  process.argv.slice(2).find((one) => !one.startsWith("--")) ??
  fileURLToPath(new URL("../../reports/accuracy", import.meta.url));
const files = existsSync(folder) ? readdirSync(folder).filter((file) => file.endsWith(".json")) : [];
if (files.length === 0) {
  console.error(`nothing measured yet: ${folder} holds no reports; run the tests first`);
  process.exit(1);
}

/** @type {Entry[]} */
const entries = files.map((file) => JSON.parse(readFileSync(join(folder, file), "utf8")));
entries.sort((left, right) => left.name.localeCompare(right.name, "en"));

const heads = ["table", "rows", "error in", "mean", "90 %", "max", "kind"];
const lines = entries.map((entry) => [
  entry.name,
  String(entry.n),
  entry.as,
  figure(entry.mean),
  figure(entry.p90),
  figure(entry.max),
  entry.kind.replace(/ \(.*/s, ""),
]);
const widths = heads.map((head, at) => Math.max(head.length, ...lines.map((line) => line[at]?.length ?? 0)));
const numbers = new Set([1, 3, 4, 5]);

console.log(row(heads));
console.log(widths.map((width) => "-".repeat(width)).join("  "));
for (const line of lines) console.log(row(line));
const figures = entries.reduce((sum, { n }) => sum + n, 0);
console.log(
  `\n${figures} figures checked in ${entries.length} measurements. In half steps, 1 is the rounding of the printed figure.`,
);

if (toReadme) {
  const readme = fileURLToPath(new URL("../../README.md", import.meta.url));
  const from = "by `npm run accuracy -- --readme`, not by hand -->\n";
  const [before, after] = readFileSync(readme, "utf8").split(/(?<=not by hand -->\n)[\s\S]*?(?=<!-- \/accuracy -->)/);
  if (!before?.endsWith(from) || after === undefined)
    throw new Error("README has lost the marks of its accuracy table");
  const outside = entries.filter(({ kind }) => !kind.startsWith("independent arithmetic"));
  const cells = outside.map(
    (entry) =>
      `| ${entry.name} | ${entry.kind.replace(/ \(.*/s, "")} | ${entry.n} | ${figure(entry.max)} | ${entry.as} |`,
  );
  const table = ["| table | kind | figures | largest error | in |", "|---|---|---:|---:|---|", ...cells].join("\n");
  writeFileSync(
    readme,
    `${before}${table}\n\nA half step is half of the last printed digit: at most 1 is agreement as printed.\n${after}`,
  );
}

if (toPage) {
  const file = fileURLToPath(new URL("../../playground/src/working/accuracy.json", import.meta.url));
  writeFileSync(file, `${JSON.stringify(pageEntries(entries), null, 2)}\n`);
}

/** @param {string[]} cells */
function row(cells) {
  const padded = cells.map((cell, at) =>
    numbers.has(at) ? cell.padStart(widths[at] ?? 0) : cell.padEnd(widths[at] ?? 0),
  );
  return padded.join("  ").trimEnd();
}

/** @param {readonly Entry[]} all what the page says of each table */
function pageEntries(all) {
  return all.map(({ name, kind, as, table, n, max }) => {
    const text = readFileSync(fileURLToPath(new URL(`../../references/${table}`, import.meta.url)), "utf8");
    const source = /^# source: (.*)$/m.exec(text)?.[1] ?? "";
    return { name, kind: kind.replace(/ \(.*/s, ""), source, figures: n, largest: figure(max), as };
  });
}
