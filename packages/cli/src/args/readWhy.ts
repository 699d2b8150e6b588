import type { ArgumentFault } from "./ArgumentFault.js";
import type { Request } from "./Request.js";

/** What `why` was asked besides a query. */
export interface WhyQuery {
  readonly file: string;
  /** null for a list of all figures */
  readonly figure: string | null;
  /** how many steps down to go; null for the form's own */
  readonly depth: number | null;
  readonly form: "text" | "markdown" | "json";
}

/** Understands a request for a working, or says everything that is wrong with it. */
export function readWhy({ files, given }: Request): WhyQuery | { readonly faults: readonly ArgumentFault[] } {
  const faults: ArgumentFault[] = [];
  const [file = "-", ...words] = files;
  const [depth] = given.get("depth") ?? [];
  const number = Number(depth);
  if (depth !== undefined && !(/^\d+$/.test(depth) && number >= 1 && number <= 100)) {
    faults.push({ at: "--depth", code: "out of range", message: `"${depth}" is not a whole number from 1 to 100` });
  }
  if (given.has("markdown") && given.has("json")) {
    faults.push({ at: "--markdown", code: "two forms", message: "and --json exclude each other" });
  }
  if (faults.length > 0) return { faults };
  const form = given.has("json") ? "json" : given.has("markdown") ? "markdown" : "text";
  // A name of several words may come without quotation marks.
  const figure = words.length === 0 ? null : words.join(" ");
  return { file, figure, depth: depth === undefined ? null : number, form };
}
