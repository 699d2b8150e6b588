import { readdirSync, readFileSync } from "node:fs";
import { formatFault, readSystem } from "@thirstline/spec";
import { describe, expect, test } from "vitest";

// Each bad file stands beside the lines a mechanic is to read. To change a message, change the lines by hand and read
// them as one who has the file open and a machine waiting: do they say what is wrong, and what would be right?
const folder = new URL("bad/", import.meta.url);
const names = readdirSync(folder)
  .filter((name) => name.endsWith(".yaml"))
  .map((name) => name.slice(0, -".yaml".length));

function faultsOf(name: string): string[] {
  const read = readSystem(readFileSync(new URL(`${name}.yaml`, folder)), { file: `${name}.yaml` });
  return "faults" in read ? read.faults.map(formatFault) : [];
}

test("the corpus of bad files is whole", () => {
  expect(names.length).toBe(273);
  const expected = readdirSync(folder).filter((name) => name.endsWith(".faults.txt"));
  expect(expected.map((name) => name.slice(0, -".faults.txt".length)).sort()).toEqual([...names].sort());
});

describe("readSystem(bad file) names every fault", () => {
  test.each(names)("%s", (name) => {
    const expected = readFileSync(new URL(`${name}.faults.txt`, folder), "utf8")
      .trimEnd()
      .split("\n");
    expect(faultsOf(name)).toEqual(expected);
  });
});

test("every fault is one line that begins with file and line and ends without a stop", () => {
  for (const name of names) {
    for (const line of faultsOf(name)) {
      expect(line).toMatch(/^[\w-]+\.yaml:\d+[ :]/);
      expect(line).not.toMatch(/[\n\r\t]|undefined|\[object|\bnull\b|[.]$/);
    }
  }
});
