import { expect, test } from "vitest";
import { foldersIn, read, sources } from "../support/repository.js";

const OURS = ["packages", "playground", "references", "tests"];
const MADE = ["coverage", "node_modules", "reports"]; // by tools, and ignored by git

interface Manifest {
  [field: string]: unknown;
}

const strangeFolders = (names: string[]) =>
  names.filter((name) => ![...OURS, ...MADE].includes(name) && name[0] !== ".");

const needs = (manifest: Manifest) => Object.keys(manifest).filter((field) => /dependencies/i.test(field));

const addresses = (lock: string) => lock.match(/"(resolved|version)": "[^"]*:\/\/[^"]*"/g) ?? [];

test("the top holds no folder but those agreed on", () => {
  expect(foldersIn(".")).toEqual(expect.arrayContaining(OURS));
  expect(strangeFolders(foldersIn("."))).toEqual([]);
  expect(strangeFolders(["packages", ".git", "scripts"])).toEqual(["scripts"]);
});

const LONG = 200;
const longOnes = (files: ReadonlyMap<string, string>) =>
  [...files].flatMap(([file, text]) => (text.split("\n").length > LONG + 1 && !/\.test\.ts$/.test(file) ? [file] : []));

test("a source of over 200 lines is one that DEVELOPERS.md gives the reason for", () => {
  const reasons = read("DEVELOPERS.md");
  const unnamed = longOnes(sources()).filter(
    (file) => !reasons.includes(`\`${file}\``) && !reasons.includes(`\`${file.split("/").at(-1)}\``),
  );
  expect(unnamed).toEqual([]);
  expect(longOnes(new Map([["a.ts", "\n".repeat(201)]]))).toEqual(["a.ts"]);
});

test("core depends on nothing", () => {
  expect(needs(JSON.parse(read("packages/core/package.json")))).toEqual([]);
  expect(needs({ name: "x", dependencies: {} })).toEqual(["dependencies"]);
  expect(needs({ name: "x", peerDependencies: {} })).toEqual(["peerDependencies"]);
});

test("the lock file names packages, not where they were downloaded from", () => {
  expect(addresses(read("package-lock.json"))).toEqual([]);
  const fetched = '"resolved": "somewhere://lit"';
  expect(addresses(`{ "node_modules/lit": { "version": "3.3.3", ${fetched} } }`)).toEqual([fetched]);
});

test.each(foldersIn("packages"))("packages/%s carries the licence and a README", (name) => {
  expect(read(`packages/${name}/LICENSE`)).toBe(read("LICENSE"));
  expect(read(`packages/${name}/README.md`)).toContain(`# ${JSON.parse(read(`packages/${name}/package.json`)).name}\n`);
});

test("CI runs the very command README gives for the tests", () => {
  const [command] = /^npm ci .*npm test$/m.exec(read("README.md")) ?? [];
  expect(command).toBeDefined();
  expect(
    read(".ci/run")
      .split("\n")
      .map((line) => line.trim()),
  ).toContain(`${command} || status=$?`);
});
