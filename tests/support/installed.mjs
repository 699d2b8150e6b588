// Installs the packs in an empty project, far from this repository, and uses them there as a stranger would: the command
// on a file of its own, README's example, and a bundle for a browser.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "vite";
import { run } from "./run.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** What a program of a stranger's asks for: one figure through every package, mathjs and zod included. */
const PROGRAM = `
import { fuels, fuelState, line, solve } from "@thirstline/core";
import { readSystem } from "@thirstline/spec";
import { check } from "@thirstline/study";
import { formulas } from "@thirstline/study/working";

export function answer(text) {
  const read = readSystem(text, { file: "heron.yaml" });
  const drop = solve(line({ length: 1, bore: 0.01, roughness: 1e-6 }), fuelState(fuels.dieselWinter, { temperature: 288.15 })).drop(1e-5);
  return { drop, verdict: "system" in read ? check(read.system).verdict : read.faults, formulas: formulas.length };
}
`;

/**
 * @param {readonly string[]} packs paths of the packs
 * @returns {Promise<boolean>} whether all of it worked
 */
export async function installed(packs) {
  const folder = mkdtempSync(join(tmpdir(), "stranger-"));
  try {
    mkdirSync(join(folder, "src"));
    writeFileSync(join(folder, "package.json"), '{ "private": true, "type": "module" }\n');
    writeFileSync(join(folder, "heron.yaml"), readFileSync(join(root, "packages/spec/demo/heron.yaml")));
    writeFileSync(join(folder, "readme.js"), `${readmeExample()}\n`);
    writeFileSync(join(folder, "src/program.js"), PROGRAM);
    writeFileSync(join(folder, "use.js"), use("./src/program.js"));
    const paths = packs.map((pack) => join(root, pack)).join(" ");
    const here = { quiet: true, cwd: folder };
    if (!(await run("installing the packs", `npm install --no-audit --no-fund --prefer-offline ${paths}`, here)))
      return false;
    const used = [
      await run("the installed command", "npx thirstline check heron.yaml", here),
      await run("README's example, installed", "node readme.js", here),
      await run("a program of its own", "node use.js", here),
    ];
    await build({
      root: folder,
      configFile: false,
      logLevel: "error",
      build: { lib: { entry: "src/program.js", formats: ["es"], fileName: "bundle" }, outDir: "bundle", minify: false },
    });
    const bundle = readFileSync(join(folder, "bundle/bundle.js"), "utf8");
    if (/^import\b|\brequire\("/m.test(bundle)) throw new Error("the bundle for a browser imports what no browser has");
    writeFileSync(join(folder, "bundled.js"), use("./bundle/bundle.js"));
    return (await run("the bundle for a browser", "node bundled.js", here)) && used.every(Boolean);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** @param {string} program where it lies */
function use(program) {
  return `
import { readFileSync } from "node:fs";
import { answer } from "${program}";
const { drop, verdict, formulas } = answer(readFileSync("heron.yaml", "utf8"));
if (!(drop > 0) || verdict !== "holds" || !(formulas > 100)) throw new Error(JSON.stringify({ drop, verdict, formulas }));
`;
}

function readmeExample() {
  const readme = readFileSync(join(root, "README.md"), "utf8");
  const [, example] = /### In your own program\n\n```js\n([\s\S]*?)```/.exec(readme) ?? [];
  if (example === undefined) throw new Error("README has no example of a program under 'In your own program'");
  return example;
}
