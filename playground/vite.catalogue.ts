import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type Plugin, runnerImport } from "vite";
import { sourceAlias } from "../tests/support/sourceAlias.mjs";

const file = fileURLToPath(new URL("../packages/spec/demo/elements.csv", import.meta.url));
const spec = fileURLToPath(new URL("../packages/spec/src/index.ts", import.meta.url));
// The reader's units as a bundler takes them: its build for Node is one script, which runs only in Node's own loader.
const mathjs = { find: "#mathjs", replacement: fileURLToPath(new URL("../packages/spec/mathjs.js", import.meta.url)) };
const NAME = "virtual:catalogue";

/** The part of the reader that is used here; its own types are checked where it lives. */
interface Reader {
  readCatalogue(
    text: string,
    options: { file: string },
  ): { elements: object[] } | { faults: { line: number; message: string }[] };
}

/**
 * Makes `virtual:catalogue`: the demonstration catalogue in SI, read when the page is built.
 *
 * @throws when it is at fault
 */
export function catalogue(): Plugin {
  return {
    name: "catalogue",
    resolveId: (id) => (id === NAME ? `\0${NAME}` : undefined),
    async load(id) {
      if (id !== `\0${NAME}`) return;
      const { module } = await runnerImport<Reader>(spec, {
        resolve: { alias: [...sourceAlias, mathjs] },
        configFile: false,
      });
      this.addWatchFile(file);
      const read = module.readCatalogue(readFileSync(file, "utf8"), { file: "elements.csv" });
      if ("elements" in read) return `export const elements = ${JSON.stringify(read.elements)};`;
      throw new Error(read.faults.map(({ line, message }) => `elements.csv:${line} ${message}`).join("\n"));
    },
  };
}
