import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { keptIn, testKeptOutcomes } from "./keptOutcomes.js";
import { transcripts } from "./transcripts.js";

testKeptOutcomes({ folder: "expected", transcripts, wide: /csv/ });

test("the package's README shows what the command line writes", () => {
  const readme = readFileSync(new URL("../../../packages/cli/README.md", import.meta.url), "utf8");
  const [, shown = "nothing shown"] = /```text\n(.*?)\n\.\.\.\n```/s.exec(readme) ?? [];
  expect(readFileSync(`${keptIn("expected")}check-starves.txt`, "utf8")).toContain(`\n${shown}\n`);
});
