// Packs each published package and checks that what is in the pack can be imported, types and all, and that it works in
// an empty project.
import { mkdirSync, readdirSync, rmSync } from "node:fs";
import { installed } from "./installed.mjs";
import { run } from "./run.mjs";

const published = ["core", "spec", "study", "cli"];
const folder = "node_modules/.cache/packs";

rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });

const workspaces = published.map((name) => `-w packages/${name}`).join(" ");
let good = await run("packing", `npm pack --pack-destination ${folder} ${workspaces}`, { quiet: true });

const packs = readdirSync(folder).map((name) => `${folder}/${name}`);
good &&= packs.length === published.length;
for (const pack of packs) {
  good =
    (await run(`pack ${pack}`, `publint ${pack} --strict && attw ${pack} --profile esm-only`, { quiet: true })) && good;
}
if (good) good = await installed(packs);

process.exitCode = good ? 0 : 1;
