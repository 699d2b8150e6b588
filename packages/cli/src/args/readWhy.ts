import { nearest } from "@thirstline/spec";
import type { ArgumentFault } from "./ArgumentFault.js";
import { type OtherQuestion, otherQuestions } from "./otherQuestions.js";
import type { Request } from "./Request.js";

/** What `why` was asked besides a query. */
export interface WhyQuery {
  /** what the question is asked of: a system file, one and its readings, or a folder */
  readonly files: readonly string[];
  /** the question whose figure it is; null for those of `check`, `curve` and `life` */
  readonly of: OtherQuestion | null;
  /** null for a list of all figures */
  readonly figure: string | null;
  /** how many steps down to go; null for the form's own */
  readonly depth: number | null;
  readonly form: "text" | "markdown" | "json";
}

/** Understands a request for a working, or says everything that is wrong with it. */
export function readWhy({ files, given }: Request): WhyQuery | { readonly faults: readonly ArgumentFault[] } {
  const faults: ArgumentFault[] = [];
  const [depth] = given.get("depth") ?? [];
  const number = Number(depth);
  if (depth !== undefined && !(/^\d+$/.test(depth) && number >= 1 && number <= 100)) {
    faults.push({ at: "--depth", code: "out of range", message: `"${depth}" is not a whole number from 1 to 100` });
  }
  if (given.has("markdown") && given.has("json")) {
    faults.push({ at: "--markdown", code: "two forms", message: "and --json exclude each other" });
  }
  const [word = null] = given.get("of") ?? [];
  const of = otherQuestions.find((one) => one === word) ?? null;
  if (word !== null && of === null) faults.push({ at: "--of", code: "unknown question", message: hintOf(word) });
  if (faults.length > 0) return { faults };
  // Readings stand in a file of their own, unless they are typed.
  const named = of === "gauge" && !given.has("reading") ? 2 : 1;
  // A name of several words may come without quotation marks.
  const words = files.slice(named);
  return {
    files: files.slice(0, named),
    of,
    figure: words.length === 0 ? null : words.join(" "),
    depth: depth === undefined ? null : number,
    form: given.has("json") ? "json" : given.has("markdown") ? "markdown" : "text",
  };
}

function hintOf(word: string): string {
  if (["check", "curve", "life"].includes(word)) return `is not needed for figures of ${word}: leave it out`;
  const near = nearest(word, otherQuestions);
  const hint = near === undefined ? `there are ${otherQuestions.join(", ")}` : `did you mean --of ${near}?`;
  return `"${word}" is not a question with figures of its own; ${hint}`;
}
