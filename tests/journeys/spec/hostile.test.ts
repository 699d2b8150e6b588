import { readFileSync } from "node:fs";
import { bounds, formatFault, readSystem } from "@thirstline/spec";
import fc from "fast-check";
import { expect, test } from "vitest";
import { smallSystem } from "./smallSystem.js";

const heron = readFileSync(new URL("../../../packages/spec/demo/heron.yaml", import.meta.url), "utf8");

/** Milliseconds a reading takes at best of three: the first also warms the machine up. */
function bestOfThree(given: string | Uint8Array): number {
  const times = [1, 2, 3].map(() => {
    const start = performance.now();
    expect(readSystem(given, { file: "x.yaml" })).toHaveProperty("faults");
    return performance.now() - start;
  });
  return Math.min(...times);
}

/** A text of as many numbered lines as a file may hold, in bytes or in pieces. */
function filled(line: (index: number) => string, start = ""): string {
  let text = start;
  for (let index = 0; text.length < bounds.bytes - 100 && index < 2000; index++) text += line(index);
  return text;
}

const hostile: Readonly<Record<string, string>> = {
  brackets: "[".repeat(bounds.bytes),
  braces: "{".repeat(bounds.bytes),
  dashes: "- ".repeat(bounds.bytes / 2),
  "question marks": "? ".repeat(bounds.bytes / 2),
  "closed brackets": `${"[".repeat(9000)}${"]".repeat(9000)}`,
  indents: Array.from({ length: 240 }, (_, depth) => `${" ".repeat(depth)}a:\n`).join(""),
  anchors: "&a ".repeat(5000),
  tags: "!a ".repeat(5000),
  aliases: `a: &a [x]\n${filled((index) => `k${index}: *a\n`)}`,
  "alias lists": filled((index) => `a${index + 1}: &a${index + 1} [*a${index}, *a${index}]\n`, "a0: &a0 [1, 2]\n"),
  "merge chain": filled((index) => `a${index + 1}: &a${index + 1} { <<: *a${index} }\n`, "a0: &a0 { x: 1 }\n"),
  "one key over and over": "a: 1\n".repeat(2300),
  "many keys": filled((index) => `key number ${index} of them: 1\n`, smallSystem),
  "many bad parts": smallSystem.replace(
    "suction:\n",
    `suction:\n${"  - line: { lengt: 6, bre: 10, srface: rubber hse }\n".repeat(90)}`,
  ),
  "many spreads": smallSystem.replace(
    "pump:",
    `${"  - filter: { leak: 1 to 3 %, medium: { area: 1 m2, thickness: 1 mm, permeability: 2e-13 m2 } }\n".repeat(95)}pump:`,
  ),
  "spreads at fault at their ends": smallSystem.replace(
    "suction:\n",
    `suction:\n${"  - valve: { kv: 1 to 2 m3/h, opening: 1 to 2 kPa }\n".repeat(31)}  - bank: [[rise: 1 to 2 m, line: { length: 1 m, bore: 9 mm, surface: steel }], [rise: 1.4142135623730951 m, line: { length: 1 m, bore: 9 mm, surface: steel }]]\n`,
  ),
  "open brackets": "a: [1, 2\n".repeat(1300),
  "open quotes": "x: 'a\n".repeat(2000),
  tabs: "\t- a\n".repeat(2000),
  colons: ": ".repeat(5000),
  documents: "---\n".repeat(5000),
  directives: "%a\n".repeat(5000),
  comments: "# x\n".repeat(8000),
  "a long quantity": smallSystem.replace("3 m,", `1 ${"m ".repeat(14_000)},`),
  "a long key": `${smallSystem}${"x".repeat(29_000)}: 1\n`,
  "a long escape": `a: "${"\\q".repeat(10_000)}"`,
};

test.each(Object.keys(hostile))("readSystem(%s) answers in less than 200 ms", (name) => {
  expect(bestOfThree(hostile[name] ?? "")).toBeLessThan(200);
});

test("readSystem(100 MB) answers in less than 200 ms", () => {
  expect(bestOfThree(new Uint8Array(100 * 1024 * 1024).fill(97))).toBeLessThan(200);
  expect(bestOfThree("a: 1\n".repeat(20 * 1024 * 1024))).toBeLessThan(200);
  const read = readSystem(new Uint8Array(100 * 1024 * 1024), { file: "big.yaml" });
  expect("faults" in read && read.faults.map(formatFault)).toEqual([
    "big.yaml:1: 104857600 bytes; a system file has at most 32768, and one machine needs far less: is it the right file?",
  ]);
});

test("readSystem(file) tells at most a hundred faults and that there are more", () => {
  const read = readSystem(hostile["many bad parts"] ?? "", { file: "x.yaml" });
  const faults = "faults" in read ? read.faults : [];
  expect(faults).toHaveLength(bounds.faults + 1);
  expect(faults.at(-1)).toMatchObject({
    code: "more faults",
    message: "more faults follow; put right the ones above first",
  });
});

test("readSystem(file) leaves every prototype as it was", () => {
  const before = Object.getOwnPropertyNames(Object.prototype);
  for (const key of ["__proto__", "constructor", "prototype"]) {
    readSystem(`${smallSystem}${key}: { polluted: true }\n`, { file: "x.yaml" });
    readSystem(`${smallSystem}a: &a { ${key}: { polluted: true } }\nb: { <<: *a }\n`, { file: "x.yaml" });
  }
  expect(Object.getOwnPropertyNames(Object.prototype)).toEqual(before);
  expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
});

/** A file with a few characters changed, put in, or left out. */
const spoilt = fc
  .array(
    fc.record({
      at: fc.nat({ max: heron.length - 1 }),
      out: fc.nat({ max: 12 }),
      put: fc.oneof(
        fc.string({ maxLength: 4 }),
        fc.constantFrom(
          "\t",
          "\n",
          "{",
          "}",
          "[",
          "]",
          ": ",
          "- ",
          "&a ",
          "*pre",
          "<<: *pre",
          '"',
          "'",
          "#",
          "|",
          ">",
          "!!x ",
        ),
        fc.constantFrom(
          " to 5",
          " ± 40 %",
          "null",
          "~",
          ".nan",
          "-.inf",
          "1e309",
          "0",
          "-1",
          "true",
          "__proto__: 1",
          "? ",
          "\u0000",
          "\ud800",
        ),
      ),
    }),
    { minLength: 1, maxLength: 4 },
  )
  .map((edits) => edits.reduce((text, { at, out, put }) => text.slice(0, at) + put + text.slice(at + out), heron));

test("readSystem(spoilt file) never throws and never answers without a system or a fault", () => {
  fc.assert(
    fc.property(spoilt, (text) => {
      const read = readSystem(text, { file: "x.yaml" });
      if ("system" in read) {
        // A system has figures only: nothing that JSON would turn into null.
        expect(JSON.parse(JSON.stringify(read.system))).toEqual(read.system);
        return;
      }
      expect(read.faults.length).toBeGreaterThan(0);
      for (const { line, column, message } of read.faults) {
        expect(line).toBeGreaterThanOrEqual(1);
        expect(column).toBeGreaterThanOrEqual(1);
        expect(message).not.toMatch(/\n|undefined|\[object/);
      }
    }),
    { numRuns: 300 },
  );
});

test("readSystem(bytes) never throws, whatever the bytes", () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
      expect(readSystem(bytes, { file: "x.yaml" })).toHaveProperty("faults");
    }),
    { numRuns: 300 },
  );
});
