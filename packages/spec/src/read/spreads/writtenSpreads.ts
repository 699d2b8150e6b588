import type { Node } from "yaml";
import { spreadEnds } from "../../units/spreadEnds.js";
import { locate } from "../locate.js";
import type { Parsed } from "../parse.js";
import type { Path } from "../RawFault.js";

/** A text of the file that carries a spread: one unknown, however often aliases repeat it. */
export interface WrittenSpread {
  /** everywhere its value stands in the data */
  readonly paths: readonly Path[];
  readonly low: string;
  readonly high: string;
}

/** Keys of free text, which is never a quantity whatever it looks like. */
const free: ReadonlySet<string> = new Set(["name", "source", "thread"]);

/** Every text with a spread in a faultless file. */
export function writtenSpreads(parsed: Parsed): WrittenSpread[] {
  const found = new Map<Node, { paths: Path[]; low: string; high: string }>();
  const visit = (value: unknown, path: Path): void => {
    if (typeof value === "object" && value !== null) {
      for (const [key, inner] of Object.entries(value)) {
        if (!free.has(key)) visit(inner, [...path, Array.isArray(value) ? Number(key) : key]);
      }
      return;
    }
    const ends = typeof value === "string" ? spreadEnds(value) : undefined;
    if (ends === undefined || parsed.root === null) return;
    const { node } = locate(parsed.root, path, parsed.targets);
    const known = found.get(node);
    if (known === undefined) found.set(node, { paths: [path], ...ends });
    else known.paths.push(path);
  };
  visit(parsed.data, []);
  return [...found.values()];
}
