import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { stepLines } from "./stepLines.js";
import { toldScenarios } from "./toldScenarios.js";

// Every other test here asks whether the figures of a working come out; this one, whether it is told as it was when it was
// last read: names, units, letters, words, sources and places in the file.

const folder = fileURLToPath(new URL("./told/", import.meta.url));
const refresh = process.env.REFRESH_EXPECTED === "1";

const kept = (name: string) => readFileSync(`${folder}${name}.txt`, "utf8");
/** A line without the figure at its end. */
const words = (line: string) => line.split(" | ", 2).join(" | ");

test.each(toldScenarios.map((scenario, at) => ({ ...scenario, at })))(
  "the workings of $name are told as kept",
  (one) => {
    // What the questions before it tell in the same words is kept with them.
    const before = toldScenarios.slice(0, one.at).flatMap(({ name }) => kept(name).split("\n").map(words));
    const known = new Set(before);
    const own = stepLines(one.steps()).filter((line) => !known.has(words(line)));
    const lines = `${own.join("\n")}\n`;
    if (refresh) {
      writeFileSync(`${folder}${one.name}.txt`, lines);
      throw new Error("written; run again without REFRESH_EXPECTED to compare"); // a run that writes must not pass
    }
    expect(lines).toBe(kept(one.name));
  },
);

test("every kept list of workings belongs to a question", () => {
  expect(readdirSync(folder).sort()).toEqual(toldScenarios.map(({ name }) => `${name}.txt`).sort());
});
