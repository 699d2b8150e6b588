import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { figure } from "./accuracyFigure.mjs";
import { intoReadme } from "./intoReadme.mjs";

// Prints how well the library meets its published tables: `npm run accuracy` after the tests, which leave one file a table
// in reports/accuracy. Another folder may be named as an argument; `--readme` also writes README's table, a line a topic,
// which holds the tables that come from outside: what only checks arithmetic is left out there. `--page` writes the same
// figures for every table, with where they come from, for the page's formulas.

/**
 * @typedef {{ name: string, kind: string, status: string, as: string, table: string, n: number, mean: number, p90: number,
 *   max: number, errors: number[] }} Entry
 */

const toReadme = process.argv.includes("--readme");
const toPage = process.argv.includes("--page");
const pageFile = fileURLToPath(new URL("../../playground/src/working/accuracy.json", import.meta.url));
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

// Written from a part of the tests, either would lose the other tables.
const missing = toReadme || toPage ? tablesLeftOut() : [];
if (missing.length > 0) {
  console.error(
    `${folder} lacks ${missing.length} measurements, ${missing[0]} among them; run all published checks first (npx vitest run --project unit tests/published), or take out of ${pageFile} what is no more`,
  );
  process.exit(1);
}

const heads = ["table", "rows", "error in", "mean", "90 %", "max", "kind"];
const lines = entries.map((entry) => [
  entry.name,
  String(entry.n),
  entry.as,
  figure(entry.mean),
  figure(entry.p90),
  figure(entry.max),
  kindOf(entry),
]);
const widths = heads.map((head, at) => Math.max(head.length, ...lines.map((line) => line[at]?.length ?? 0)));
const numbers = new Set([1, 3, 4, 5]);

console.log(row(heads));
console.log(widths.map((width) => "-".repeat(width)).join("  "));
for (const line of lines) console.log(row(line));
console.log(
  `\n${count(entries)} figures checked in ${entries.length} measurements. In half steps, 1 is the rounding of the printed figure.`,
);

console.log("\nWhere each comes from, and how sure that is:\n");
for (const entry of entries) console.log(`${entry.name}: ${oneLine(entry.status)}. Source: ${sourceOf(entry)}`);

if (toReadme) {
  const outside = entries.filter(({ kind }) => !kind.startsWith("independent arithmetic"));
  const table = [
    "| topic | errors | tables | figures | mean | 90 % | largest | in table |",
    "|---|---|---:|---:|---:|---:|---:|---|",
    ...topicsOf(outside).map(topicLine),
  ].join("\n");
  const text = `${outside.length} tables, ${count(outside)} figures. A half step is half of the last printed digit: at most 1 is\nagreement as printed. An absolute error is in the table's own unit.`;
  intoReadme("accuracy", `${table}\n\n${text}\n`);
}

if (toPage) {
  writeFileSync(pageFile, `${JSON.stringify(pageEntries(entries), null, 2)}\n`);
}

/** Measurements that the page has and this folder has not. */
function tablesLeftOut() {
  /** @type {{ name: string }[]} */
  const before = JSON.parse(readFileSync(pageFile, "utf8"));
  const measured = new Set(entries.map(({ name }) => name));
  return before.flatMap(({ name }) => (measured.has(name) ? [] : [name]));
}

/** @param {string[]} cells */
function row(cells) {
  const padded = cells.map((cell, at) =>
    numbers.has(at) ? cell.padStart(widths[at] ?? 0) : cell.padEnd(widths[at] ?? 0),
  );
  return padded.join("  ").trimEnd();
}

/** @param {readonly Entry[]} some */
function count(some) {
  return some.reduce((sum, { n }) => sum + n, 0);
}

/** @param {Entry} entry */
function kindOf({ kind }) {
  return kind.replace(/ \(.*/s, "");
}

/**
 * Where a table's figures come from, as its header has it.
 *
 * @param {Entry} entry
 */
function sourceOf({ table }) {
  const text = readFileSync(fileURLToPath(new URL(`../../references/${table}`, import.meta.url)), "utf8");
  return /^# source: (.*)$/m.exec(text)?.[1] ?? "";
}

/** @param {string} text a header line that may have been given in several */
function oneLine(text) {
  return text.replaceAll("\n", "; ");
}

/**
 * Tables of one topic whose errors are counted alike. Absolute errors are each in a unit of their own, so such a table stands
 * alone.
 *
 * @param {readonly Entry[]} some
 */
function topicsOf(some) {
  /** @type {Map<string, Entry[]>} */
  const topics = new Map();
  for (const entry of some) {
    const topic = entry.as === "absolute" ? entry.name : `${entry.name.split("/")[0]} ${entry.as}`;
    topics.set(topic, [...(topics.get(topic) ?? []), entry]);
  }
  return [...topics.values()];
}

/** @param {Entry[]} tables of one topic */
function topicLine(tables) {
  const errors = tables.flatMap((entry) => entry.errors).sort((one, other) => one - other);
  const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
  const worst = tables.reduce((one, other) => (other.max > one.max ? other : one));
  const [topic, ...rest] = worst.name.split("/");
  const ninth = errors[Math.ceil(0.9 * errors.length) - 1] ?? Number.NaN;
  const cells = [topic, worst.as, tables.length, errors.length, figure(mean), figure(ninth), figure(worst.max)];
  return `| ${cells.join(" | ")} | ${rest.join("/")} |`;
}

/** @param {readonly Entry[]} all what the page says of each table */
function pageEntries(all) {
  return all.map((entry) => {
    const { name, status, as, n, mean, p90, max } = entry;
    const errors = { mean: figure(mean), ninetyPercent: figure(p90), largest: figure(max), as };
    return { name, kind: kindOf(entry), source: sourceOf(entry), status: oneLine(status), figures: n, ...errors };
  });
}
