import { type Alias, type Document, LineCounter, type Node, parseDocument, visit } from "yaml";
import { bounds } from "./bounds.js";
import { lexicalFault } from "./lexicalFault.js";
import { plainData } from "./plainData.js";
import type { RawFault } from "./RawFault.js";
import { syntaxFaults } from "./syntaxFaults.js";

/** A file's text parsed: its data, where each value stands, and the faults of its form. */
export interface Parsed {
  readonly root: Node | null;
  readonly data: unknown;
  readonly targets: ReadonlyMap<Alias, Node>;
  readonly faults: readonly RawFault[];
  /** offset from which on the text may have been misread; Infinity when all is well */
  readonly sureUpTo: number;
  /** whether there is no data to judge */
  readonly stopped: boolean;
  /** line and column, from 1, of an offset */
  readonly position: (offset: number) => { readonly line: number; readonly column: number };
}

/** Parses YAML 1.2, of which JSON is a part. */
export function parse(text: string): Parsed {
  const lines = new LineCounter();
  // Keys met twice are looked for in `plainData`, whose cost does not grow with the square of a block's length.
  const options = {
    version: "1.2",
    schema: "core",
    uniqueKeys: false,
    prettyErrors: false,
    logLevel: "error",
  } as const;
  const refused = lexicalFault(text);
  if (refused !== undefined) return unparsed(refused, text);
  const document = parseDocument(text, { ...options, lineCounter: lines });
  // No more are told, and each takes its time; what follows the last of them is as unsure as after a break.
  const errors = document.errors.slice(0, bounds.faults + 1);
  const syntax = syntaxFaults(errors, text, lastQuote(document));
  const plain = plainData(document);
  const form = syntax.map(({ code, message, offset }): RawFault => ({ code, message, path: [], at: offset }));
  const breaks = syntax.filter(({ spreads }) => spreads).map(({ offset }) => offset);
  if (errors.length < document.errors.length) breaks.push(errors.at(-1)?.pos[0] ?? 0);
  return {
    root: document.contents,
    data: plain.data,
    targets: plain.targets,
    faults: [...form, ...directiveFaults(text), ...plain.faults.slice(0, bounds.faults + 1)],
    sureUpTo: Math.min(...breaks, Number.POSITIVE_INFINITY),
    stopped: plain.stopped,
    position: (offset) => {
      const { line, col } = lines.linePos(offset);
      return { line: Math.max(1, line), column: Math.max(1, col) };
    },
  };
}

/** What is known of a text that is not parsed at all: why, and where. */
function unparsed(fault: RawFault, text: string): Parsed {
  return {
    root: null,
    data: undefined,
    targets: new Map(),
    faults: [fault],
    sureUpTo: 0,
    stopped: true,
    position: (offset) => {
      const before = text.slice(0, offset).split("\n");
      return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
    },
  };
}

/** Where the last text in quotes begins. */
function lastQuote(document: Document): number | undefined {
  if (document.errors.length === 0) return undefined;
  let start: number | undefined;
  visit(document, {
    Scalar: (_key, node) => {
      if (node.type?.startsWith("QUOTE") && node.range) start = Math.max(start ?? 0, node.range[0]);
    },
  });
  return start;
}

/** A line that would switch the reader to another YAML, where "yes" is true and 010 is eight. */
function directiveFaults(text: string): RawFault[] {
  const found = /^%(YAML +(?!1\.2)|TAG).*$/m.exec(text);
  if (found === null) return [];
  const message = "a directive to the YAML reader; leave the line out, files are read as YAML 1.2";
  return [{ code: "directive", path: [], message, at: found.index }];
}
