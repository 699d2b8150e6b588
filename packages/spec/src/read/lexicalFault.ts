import { Lexer } from "yaml";
import { bounds } from "./bounds.js";
import type { RawFault } from "./RawFault.js";

/** Widest indent of a line: room for the deepest block allowed at any usual indent, and far less than a stack holds. */
const widestIndent = 400;

/** Marks the lexer puts between pieces of the text: begin of a document, of a plain text, end of brackets. */
const marks = new Set(["\u0002", "\u0018", "\u001f"]);

/**
 * Faults a text that would take long to parse, or go too deep: parsing goes down with the blocks and lists, call by call,
 * and a stack that runs out inside a regular expression ends the whole process. So this comes before.
 */
export function lexicalFault(text: string): RawFault | undefined {
  let offset = 0;
  let pieces = 0;
  let brackets = 0;
  let indicators = 0;
  let atLineStart = true;
  for (const piece of new Lexer().lex(text)) {
    if (marks.has(piece)) continue;
    if (piece === "[" || piece === "{") brackets += 1;
    else if (piece === "]" || piece === "}") brackets = Math.max(0, brackets - 1);
    else if (piece === "-" || piece === "?" || piece === ":") indicators += 1;
    else if (piece === "\n" || piece === "\r\n") indicators = 0;
    const indent = atLineStart && /^ +$/.test(piece) ? piece.length : 0;
    if (brackets > bounds.depth || indicators > bounds.depth || indent > widestIndent) {
      const message = `more than ${bounds.depth} blocks or lists inside one another; no system needs that`;
      return { code: "too deep", path: [], message, at: offset };
    }
    pieces += 1;
    if (pieces > bounds.pieces) {
      const message = `more than ${bounds.pieces} words and signs up to here; no system needs that`;
      return { code: "too much", path: [], message, at: offset };
    }
    atLineStart = piece.endsWith("\n");
    offset += piece.length;
  }
  return undefined;
}
