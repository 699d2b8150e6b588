import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Plugin } from "vite";

const folder = fileURLToPath(new URL("../packages/spec/demo/", import.meta.url));
const NAME = "virtual:field";

const endingIn = (place: string, ending: string) => readdirSync(folder + place).filter((file) => file.endsWith(ending));
const textOf = (path: string) => ({ path, text: readFileSync(folder + path, "utf8") });

/**
 * Makes `virtual:field`: the invented gauge readings, and the invented yard with the system files its list names, as the
 * texts that they are, since the page reads a reader's own in the same way.
 */
export function field(): Plugin {
  return {
    name: "field",
    resolveId: (id) => (id === NAME ? `\0${NAME}` : undefined),
    load(id) {
      if (id !== `\0${NAME}`) return;
      const readings = endingIn("readings/", ".csv").map((file) => textOf(`readings/${file}`));
      const tables = endingIn("yard/", ".csv").map((file) => textOf(`yard/${file}`));
      const list = tables.find(({ path }) => path === "yard/machines.csv")?.text ?? "";
      const systems = endingIn("", ".yaml").filter((file) => list.includes(`../${file}`));
      const yard = [...tables, ...systems.map(textOf)];
      for (const { path } of [...readings, ...yard]) this.addWatchFile(folder + path);
      return `export const readings = ${JSON.stringify(readings)};\nexport const yard = ${JSON.stringify(yard)};`;
    },
  };
}
