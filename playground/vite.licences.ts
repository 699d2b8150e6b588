import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Plugin } from "vite";

const packages = fileURLToPath(new URL("../node_modules/", import.meta.url));
const own = ["./", "../packages/core/", "../packages/spec/", "../packages/study/"];

interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly dependencies?: Readonly<Record<string, string>>;
}

/** Adds `licences.txt` to a build: the licence and notice of every package and font the page is built from. */
export function licences(): Plugin {
  return {
    name: "licences",
    apply: "build",
    generateBundle() {
      const found = new Map<string, Manifest>();
      for (const folder of own) addDependencies(read(fileURLToPath(new URL(folder, import.meta.url))), found);
      const parts = [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([name, manifest]) => notice(name, manifest));
      this.emitFile({ type: "asset", fileName: "licences.txt", source: `${HEAD}\n\n${parts.join("\n\n")}\n` });
    },
  };
}

const HEAD = `This page is made with the works of others, its lettering among them. Their names, versions, licences and notices:`;

function addDependencies(manifest: Manifest, found: Map<string, Manifest>): void {
  for (const name of Object.keys(manifest.dependencies ?? {})) {
    if (found.has(name) || name.startsWith("@thirstline/")) continue;
    const dependency = read(`${packages}${name}/`);
    found.set(name, dependency);
    addDependencies(dependency, found);
  }
}

function read(folder: string): Manifest {
  return JSON.parse(readFileSync(`${folder}package.json`, "utf8")) as Manifest;
}

function notice(name: string, { version, license }: Manifest): string {
  const folder = `${packages}${name}/`;
  const files = existsSync(folder) ? readdirSync(folder).filter((file) => /^(licen[cs]e|notice)/i.test(file)) : [];
  const texts = files.map((file) => readFileSync(folder + file, "utf8").trim());
  if (texts.length === 0) texts.push("Its package states the licence's name and comes without a text of it.");
  return [`${"=".repeat(72)}\n${name} ${version} (${license ?? "see its text"})`, ...texts].join("\n\n");
}
