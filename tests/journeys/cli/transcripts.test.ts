import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { thirstline } from "./thirstline.js";
import { transcripts } from "./transcripts.js";

const kept = fileURLToPath(new URL("./expected/", import.meta.url));
const refresh = process.env.REFRESH_EXPECTED === "1";

/** A command line and everything it did, as it is kept. */
function outcome({ args, folder }: (typeof transcripts)[number]): string {
  const { stdout, stderr, code } = thirstline(args, { folder });
  const words = args.map((arg) => (/^[\w./=-]+$/.test(arg) ? arg : `"${arg}"`));
  const parts = [`$ thirstline ${words.join(" ")}`.trimEnd(), `exit code ${code}`];
  return `${[...parts, `--- standard output\n${stdout}--- standard error\n${stderr}`].join("\n")}---\n`;
}

if (refresh) {
  test.each(transcripts)("$name is written anew, to be read line by line before it is taken in", (transcript) => {
    mkdirSync(kept, { recursive: true });
    writeFileSync(`${kept}${transcript.name}.txt`, outcome(transcript));
    throw new Error("written; run again without REFRESH_EXPECTED to compare"); // a run that writes must not pass
  });
} else {
  test.each(transcripts)("thirstline does what is kept: $name", (transcript) => {
    expect(outcome(transcript)).toBe(readFileSync(`${kept}${transcript.name}.txt`, "utf8"));
  });
}

test("every kept outcome belongs to a command line, and all but data fits 80 columns", () => {
  const names = readdirSync(kept).filter((name) => name.endsWith(".txt"));
  expect(names.sort()).toEqual(transcripts.map(({ name }) => `${name}.txt`).sort());
  const wide = names
    .filter((name) => !name.includes("csv"))
    .flatMap((name) => readFileSync(`${kept}${name}`, "utf8").split("--- standard error")[0]?.split("\n") ?? [])
    .filter((line) => [...line].length > 80 && !line.startsWith("$ "));
  expect(wide).toEqual([]);
});

test("the package's README shows what the command line writes", () => {
  const readme = readFileSync(new URL("../../../packages/cli/README.md", import.meta.url), "utf8");
  const [, shown = "nothing shown"] = /```text\n(.*?)\n\.\.\.\n```/s.exec(readme) ?? [];
  expect(readFileSync(`${kept}check-starves.txt`, "utf8")).toContain(`\n${shown}\n`);
});
