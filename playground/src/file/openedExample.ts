import type { System } from "@thirstline/spec/system";
import type { Example } from "../model/Example.js";
import type { Opened } from "./Opened.js";

const texts = import.meta.glob<string>("../../../packages/spec/demo/*.yaml", { query: "?raw", import: "default" });
const byFile = new Map(Object.entries(texts).map(([path, text]) => [path.slice(path.lastIndexOf("/") + 1), text]));

/** The example a system came of, by its name, as a file that was opened; its text is fetched now. Null where it is none. */
export async function openedExample({ name }: System, examples: readonly Example[]): Promise<Opened | null> {
  const example = examples.find(({ system }) => system.name === name);
  const text = example && (await byFile.get(example.file)?.());
  if (example === undefined || text === undefined) return null;
  return { file: example.file, text, read: JSON.stringify(example.system) };
}
