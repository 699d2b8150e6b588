import { expect, test } from "vitest";
import { importFaults } from "../support/imports.js";
import { sources } from "../support/repository.js";

const faultsOf = (files: Record<string, string>) => importFaults(new Map(Object.entries(files)));

test("the sources keep the import rules", () => {
  const ours = sources();
  expect(ours.has("playground/src/main.ts")).toBe(true); // an empty list would keep every rule
  expect(importFaults(ours)).toEqual([]);
});

test("importFaults(sources) lets every folder use what it is built on", () => {
  const faults = faultsOf({
    "packages/core/src/require.ts": 'import { InputError } from "./InputError.js";',
    "packages/core/src/parts/line.ts": 'import type { Fuel } from "../fuel/fuel.js"; import "../require.js";',
    "packages/core/src/soil/life.ts": 'import { solve } from "../circuit/solve.js";',
    "packages/core/src/index.ts": 'export { line } from "./parts/line.js"; export * from "./soil/life.js";',
    "packages/spec/src/units.ts": 'import { create } from "mathjs/number"; import { z } from "zod";',
    "packages/study/src/working/evaluate.ts": 'const mathjs = import("mathjs/number");',
    "packages/cli/src/main.ts": 'import { readFile } from "node:fs/promises"; import "@thirstline/study";',
    "playground/src/main.ts": 'import css from "uplot/dist/uPlot.min.css?inline"; import "@thirstline/spec/system";',
  });
  expect(faults).toEqual([]);
});

test.each([
  ["packages/core/src/fuel/fuel.ts", "zod", "outside its folder it may use nothing"],
  ["packages/core/src/require.ts", "node:fs", "outside its folder it may use nothing"],
  ["packages/core/src/fuel/fuel.ts", "../parts/line.js", "parts does not lie below fuel"],
  ["packages/core/src/circuit/solve.ts", "../supply/ceiling.js", "supply does not lie below circuit"],
  ["packages/core/src/supply/judge.ts", "../soil/life.js", "soil does not lie below supply"],
  ["packages/core/src/require.ts", "./fuel/fuel.js", "fuel does not lie below ground"],
  ["packages/spec/src/read.ts", "../../core/src/index.js", "import another package by its name"],
  ["packages/spec/src/read.ts", "mathjs", "outside its folder it may use @thirstline/core, yaml, zod"],
  ["packages/study/src/check.ts", "mathjs/number", "outside its folder it may use @thirstline/core, @thirstline/spec"],
  [
    "packages/cli/src/main.ts",
    "@thirstline/core",
    "outside its folder it may use @thirstline/spec, @thirstline/study, node:",
  ],
  [
    "playground/src/main.ts",
    "zod",
    "outside its folder it may use @thirstline/spec, @thirstline/study, lit, uplot, temml, idb, @fontsource/stix-two-math, virtual:catalogue, virtual:examples, virtual:field, virtual:opening, " +
      "@fontsource-variable/atkinson-hyperlegible-next, @fontsource/atkinson-hyperlegible-mono",
  ],
])("importFaults(sources) names %s for importing %s", (file, name, why) => {
  const fault = `${file} imports ${name}: ${why}`;
  expect(faultsOf({ [file]: `import { a } from "${name}";` })).toEqual([fault]);
  expect(faultsOf({ [file]: `import type { A } from "${name}";` })).toEqual([fault]);
  expect(faultsOf({ [file]: `export * from "${name}";` })).toEqual([fault]);
  expect(faultsOf({ [file]: `const a = await import("${name}");` })).toEqual([fault]);
});

test("importFaults(sources) sees through a name the package's manifest gives to other packages", () => {
  const faults = faultsOf({
    "packages/spec/package.json": '{ "imports": { "#maths": { "node": "mathjs/number", "default": "mathjs" } } }',
    "packages/spec/src/read.ts": 'import "#maths"; import "#nothing";',
    "packages/spec/src/units/parse.ts": 'import "#maths";',
  });
  expect(faults).toEqual([
    "packages/spec/src/read.ts imports mathjs/number: outside its folder it may use @thirstline/core, yaml, zod",
    "packages/spec/src/read.ts imports mathjs: outside its folder it may use @thirstline/core, yaml, zod",
    "packages/spec/src/read.ts imports #nothing: outside its folder it may use @thirstline/core, yaml, zod",
  ]);
});

test("importFaults(sources) names every file of a cycle, once", () => {
  const faults = faultsOf({
    "packages/study/src/check.ts": 'import "./curve.js";',
    "packages/study/src/curve.ts": 'import { life } from "./life.js";',
    "packages/study/src/life.ts": 'import type { Curve } from "./curve.js";',
  });
  expect(faults).toEqual([
    "import cycle: packages/study/src/curve.ts -> packages/study/src/life.ts -> packages/study/src/curve.ts",
  ]);
});
