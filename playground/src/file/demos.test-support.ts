import { readSystem } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";

const texts: Record<string, string> = import.meta.glob("../../../packages/spec/demo/*.yaml", {
  query: "?raw",
  import: "default",
  eager: true,
});

/** Every demonstration file's text by its name. */
export const demoTexts = new Map(
  Object.entries(texts).map(([path, text]) => [path.slice(path.lastIndexOf("/") + 1), text]),
);

/** A demonstration file as the command line reads it. */
export function demo(file: string): System {
  const read = readSystem(demoTexts.get(file) ?? "", { file });
  if ("faults" in read) throw new Error(`${file} has faults`);
  return read.system;
}
