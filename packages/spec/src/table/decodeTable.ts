import { decode } from "../read/decode.js";
import type { Fault } from "../read/Fault.js";
import type { TableBounds } from "./TableBounds.js";

/**
 * The text of a table's file, or why there is none; line by line, so that the reader of system files can do it.
 *
 * @param what the table is, for its faults, such as "a catalogue of 20000 elements needs less"
 */
export function decodeTable(
  given: string | Uint8Array,
  file: string,
  bounds: Pick<TableBounds, "bytes">,
  what: string,
): { text: string } | { fault: Fault } {
  const fault = (code: string, line: number, message: string) => ({
    fault: { file, line, column: 1, path: "", code, received: null, message },
  });
  if (given.length > bounds.bytes) return fault("too large", 1, `more than ${bounds.bytes / 1024 / 1024} MB; ${what}`);
  if (typeof given === "string") return { text: given.replace(/^\ufeff/, "") };
  const pieces: string[] = [];
  let line = 1;
  for (let from = 0; from < given.length; ) {
    // A line feed is never part of a longer character in UTF-8, so the text can be cut at any of them.
    const aim = Math.min(given.length, from + PIECE);
    const feed = given.lastIndexOf(10, aim - 1);
    const end = aim === given.length ? aim : feed >= from ? feed + 1 : aim;
    const decoded = decode(given.subarray(from, end));
    if ("fault" in decoded) return fault(decoded.fault.code, line + decoded.fault.line - 1, decoded.fault.message);
    pieces.push(decoded.text);
    line += decoded.text.split("\n").length - 1;
    from = end;
  }
  return { text: pieces.join("") };
}

/** Bytes decoded at once: within what a system file may have. */
const PIECE = 16 * 1024;
