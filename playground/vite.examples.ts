import { readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { fileURLToPath } from "node:url";
import { type Plugin, runnerImport } from "vite";
import { sourceAlias } from "../tests/support/sourceAlias.mjs";

const folder = fileURLToPath(new URL("../packages/spec/demo/", import.meta.url));
const spec = fileURLToPath(new URL("../packages/spec/src/index.ts", import.meta.url));
// The reader's units as a bundler takes them: its build for Node is one script, which runs only in Node's own loader.
const mathjs = { find: "#mathjs", replacement: fileURLToPath(new URL("../packages/spec/mathjs.js", import.meta.url)) };
/** Modules by name, and which files are in them: those the page opens with, and all. */
const modules: Readonly<Record<string, (file: string) => boolean>> = {
  "virtual:opening": (file) => ["heron.yaml", "heron-finer.yaml"].includes(file),
  "virtual:examples": () => true,
};

/** The part of the reader that is used here; its own types are checked where it lives. */
interface Reader {
  readSystem(
    text: string,
    options: { file: string },
  ): { system: { name: string }; cautions: { message: string }[] } | { faults: { line: number; message: string }[] };
}

/**
 * Makes `virtual:opening` and `virtual:examples`: the demonstration systems the page opens with, and all of them, in SI,
 * read when the page is built, so that the page opens without the reader and its units.
 *
 * @throws when a demonstration file is at fault
 */
export function examples(): Plugin {
  return {
    name: "examples",
    resolveId: (id) => (id in modules ? `\0${id}` : undefined),
    async load(id) {
      const wanted = modules[id.slice(1)];
      if (!id.startsWith("\0") || wanted === undefined) return;
      const { module } = await runnerImport<Reader>(spec, {
        resolve: { alias: [...sourceAlias, mathjs] },
        configFile: false,
      });
      const files = readdirSync(folder).filter((file) => file.endsWith(".yaml") && wanted(file));
      for (const file of files) this.addWatchFile(folder + file);
      const list = files.map((file) => ({ file: basename(file), ...readOne(module, file) }));
      return `export const examples = ${JSON.stringify(list)};`;
    },
  };
}

function readOne({ readSystem }: Reader, file: string) {
  const read = readSystem(readFileSync(folder + file, "utf8"), { file });
  if ("system" in read) return { system: read.system, cautions: read.cautions.map(({ message }) => ({ message })) };
  throw new Error(read.faults.map(({ line, message }) => `${file}:${line} ${message}`).join("\n"));
}
