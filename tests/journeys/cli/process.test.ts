import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { BIN, FOLDERS, thirstline } from "./thirstline.js";

const text = (name: string) => readFileSync(`${FOLDERS.files}/${name}`, "utf8");
const files = { folder: "files" } as const;

test("thirstline check - reads standard input", () => {
  const fromFile = thirstline(["check", "soiled.yaml"], files);
  expect(thirstline(["check", "-"], { ...files, input: text("soiled.yaml") })).toEqual(fromFile);
  expect(fromFile.stdout).toContain("HOLDS");
});

test("thirstline check - names standard input in a fault", () => {
  const { stderr, code } = thirstline(["check", "-"], { ...files, input: text("faulty.yaml") });
  expect(stderr.split("\n")[0]).toBe('standard input:3 fuel.temperature: "15" has no unit; write it as "15 degC"');
  expect(code).toBe(2);
});

test("thirstline check - says so when nothing comes in", () => {
  const { stderr, code } = thirstline(["check", "-"], files);
  expect(stderr).toBe("standard input:1: nothing in the file; a system file begins with format: thirstline/1\n");
  expect(code).toBe(2);
});

test("thirstline check - - reads standard input once and says so", () => {
  const { stderr, stdout, code } = thirstline(["check", "-", "-"], { ...files, input: text("soiled.yaml") });
  expect(stderr).toBe("standard input: can be read only once\n");
  expect(stdout).toContain("Bench, half-soiled element");
  expect(code).toBe(2);
});

test("thirstline check - gives up on standard input that never ends", () => {
  const { stderr, code } = thirstline(["check", "-"], { ...files, input: "#".repeat(1_000_000) });
  expect(stderr).toMatch(/^standard input:1: \d+ bytes; a system file has at most \d+/);
  expect(code).toBe(2);
});

test.each([
  [["soiled.yaml"], 0],
  [["shut.yaml"], 1],
  [["no-limit.yaml"], 4],
  [["soiled.yaml", "--demand", "240 L/h"], 3],
  [["soiled.yaml", "no-limit.yaml"], 4],
  [["no-limit.yaml", "shut.yaml", "soiled.yaml"], 1],
  [["shut.yaml", "faulty.yaml", "soiled.yaml"], 2],
])("thirstline check %j exits %i", (args, code) => {
  expect(thirstline(["check", ...args], files).code).toBe(code);
});

test.each([
  [["soiled.yaml"], 0],
  [["no-limit.yaml"], 0],
  [["shut.yaml"], 4],
  [["soiled.yaml", "-t", "-30 degC"], 4],
  [["faulty.yaml"], 2],
])("thirstline curve %j exits %i", (args, code) => {
  expect(thirstline(["curve", ...args], files).code).toBe(code);
});

test("thirstline check takes a temperature in any unit, and shows it once", () => {
  const warm = ["-t", "15 degC", "--temperature=59 degF", "-t=288.15 K"];
  expect(thirstline(["check", "soiled.yaml", ...warm], files)).toEqual(
    thirstline(["check", "soiled.yaml", "-t", "15 degC"], files),
  );
});

test("thirstline check shows the same system in both systems of units", () => {
  const metric = thirstline(["check", "soiled.yaml"], files).stdout;
  const us = thirstline(["check", "soiled.yaml", "--units", "us"], files).stdout;
  expect(metric).toMatch(/Demand +100 L\/h/);
  expect(us).toMatch(/Demand +26\.4 gal\/h/);
  expect(us).not.toMatch(/kPa|L\/h|°C/);
});

test("thirstline writes no colour into a file, unless it is forced to", () => {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the escape that begins every colour is what is looked for
  const colour = /\u001b\[/;
  expect(thirstline(["check", "soiled.yaml"], files).stdout).not.toMatch(colour);
  expect(thirstline(["check", "soiled.yaml"], { ...files, environment: { FORCE_COLOR: "1" } }).stdout).toMatch(colour);
});

test("thirstline help and thirstline help check are --help by another name", () => {
  expect(thirstline(["help"], files)).toEqual(thirstline(["--help"], files));
  expect(thirstline(["help", "check"], files)).toEqual(thirstline(["check", "--help"], files));
});

test("thirstline --version is the package's", () => {
  const { version } = JSON.parse(readFileSync(new URL("../../../packages/cli/package.json", import.meta.url), "utf8"));
  expect(thirstline(["--version"], files)).toEqual({ stdout: `thirstline ${version}\n`, stderr: "", code: 0 });
});

test("thirstline --help does not wait for units, file reader and physics to load", () => {
  const seconds = (...args: string[]) => {
    const begun = performance.now();
    thirstline(args, files);
    return (performance.now() - begun) / 1000;
  };
  const rounds = Array.from({ length: 5 }, () => [seconds("--help"), seconds("check", "soiled.yaml")] as const);
  const [help, check] = [0, 1].map((at) => Math.min(...rounds.map((round) => round[at as 0 | 1]))) as [number, number];
  // 0.08 s against 0.33 s when measured; both grow alike on a busy machine, and the second bound is for a broken one.
  expect(help / check).toBeLessThan(0.5);
  expect(help).toBeLessThan(1);
});

test("thirstline ends quietly when its reader has had enough", async () => {
  const args = [BIN, "curve", "soiled.yaml", "--csv", "--points", "10001"];
  const child = spawn(process.execPath, args, { cwd: FOLDERS.files, env: { PATH: process.env.PATH } });
  let complaints = "";
  child.stderr.setEncoding("utf8").on("data", (piece) => {
    complaints += piece;
  });
  child.stdout.once("data", () => child.stdout.destroy());
  const code = await new Promise((resolve) => child.on("close", resolve));
  expect(complaints).toBe("");
  expect(code).toBe(0);
});
