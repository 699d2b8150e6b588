import type { YAMLError } from "yaml";

/** A fault of YAML's own form. */
export interface SyntaxFault {
  readonly code: string;
  readonly message: string;
  /** into the text */
  readonly offset: number;
  /** whether what follows it may have been misread */
  readonly spreads: boolean;
}

/**
 * YAML's own faults in plain words; of those that upset all that follows only the first is told.
 *
 * @param openQuote where the last text in quotes begins: YAML finds that it is not closed only at the end of the file
 */
export function syntaxFaults(errors: readonly YAMLError[], text: string, openQuote: number | undefined): SyntaxFault[] {
  const faults: SyntaxFault[] = [];
  let spread = false;
  for (const error of errors) {
    const offset = startOf(error, openQuote);
    const fault = { ...inPlainWords(error, around(text, offset)), offset };
    // Every tab is told: they all have to go, and most files have many.
    if (fault.spreads && spread && fault.code !== "tab") continue;
    if (fault.spreads) spread = true;
    faults.push(fault);
  }
  return faults;
}

function startOf(error: YAMLError, openQuote: number | undefined): number {
  const isQuote = error.code === "MISSING_CHAR" && error.message.includes("quote");
  return isQuote && openQuote !== undefined ? openQuote : error.pos[0];
}

/** The line of an offset up to it, and what follows on it. */
function around(text: string, offset: number): Around {
  const start = text.lastIndexOf("\n", offset - 1) + 1;
  const end = text.indexOf("\n", offset);
  return { before: text.slice(start, offset), rest: text.slice(offset, end === -1 ? undefined : end).slice(0, 200) };
}

interface Around {
  readonly before: string;
  readonly rest: string;
}

function inPlainWords(error: YAMLError, { before, rest }: Around): Omit<SyntaxFault, "offset"> {
  const local = (code: string, message: string) => ({ code, message, spreads: false });
  const spreading = (message: string) => ({ code: "not YAML", message, spreads: true });
  switch (error.code) {
    case "TAB_AS_INDENT":
      return { code: "tab", message: "a tab indents this line; YAML takes spaces only", spreads: true };
    case "BAD_SCALAR_START":
      return /^[,\]}]/.test(rest) ? spreading(misplaced) : local("needs quotes", needsQuotes(rest));
    case "BAD_DQ_ESCAPE":
      return local("bad escape", "a backslash in double quotes begins an escape, and this is none; use single quotes");
    case "MULTIPLE_DOCS":
      return local("two documents", "a second document begins here; a file holds one machine");
    case "BLOCK_AS_IMPLICIT_KEY":
    case "BLOCK_IN_FLOW":
      return /^[^:]*[{[]/.test(rest) && before.trim() === ""
        ? spreading("a key before a bracket with no colon between; write it as in place: { altitude: 0 m }")
        : spreading('a second ": " on this line; write the text in quotes, or what follows on lines of its own');
    case "MULTILINE_IMPLICIT_KEY":
      return spreading('a line with neither "key: value" nor "- item"; check its colon and its indent');
    case "BAD_INDENT":
      return /must be sufficiently indented/.test(error.message)
        ? spreading(
            `a bracket opened above is not closed; write the missing ${error.message.slice(-1)} before this line`,
          )
        : spreading("this line does not line up with its block; indent it as its neighbours are");
    case "MISSING_CHAR":
      return missingCharacter(error.message, spreading);
    case "UNEXPECTED_TOKEN":
      return error.message.startsWith("Block scalar header")
        ? local("needs quotes", needsQuotes(error.message.slice(error.message.indexOf(": ") + 2)))
        : spreading(misplaced);
    default:
      return spreading(`not readable as YAML: ${error.message.split("\n")[0]}`);
  }
}

const misplaced = "this does not belong here; check commas, brackets and quotes before it";

/** The message for a text that begins with a sign YAML keeps for itself. */
function needsQuotes(rest: string): string {
  const [word = ""] = /^\S[^\s,}\]]{0,30}/.exec(rest) ?? [];
  return `${word} begins with ${word.slice(0, 1)}; write it in quotes: "${word}"`;
}

function missingCharacter(
  message: string,
  spreading: (message: string) => Omit<SyntaxFault, "offset">,
): Omit<SyntaxFault, "offset"> {
  if (message.includes("quote"))
    return spreading("the quotation mark that opens here is never closed; write one at the text's end");
  if (message.includes("map values")) return spreading('a key without its value; write it as in "bore: 10 mm"');
  if (message.includes(",")) return spreading("a comma is missing between two items");
  return spreading(`not readable as YAML: ${message.split("\n")[0]}`);
}
