import { decode } from "../read/decode.js";
import type { Fault } from "../read/Fault.js";
import { catalogueBounds } from "./catalogueBounds.js";

/** The text of a catalogue, or why there is none; line by line, so that the reader of system files can do it. */
export function decodeText(given: string | Uint8Array, file: string): { text: string } | { fault: Fault } {
  const fault = (code: string, line: number, message: string) => ({
    fault: { file, line, column: 1, path: "", code, received: null, message },
  });
  if (given.length > catalogueBounds.bytes) {
    const most = `${catalogueBounds.bytes / 1024 / 1024} MB`;
    return fault("too large", 1, `more than ${most}; a catalogue of ${catalogueBounds.rows} elements needs less`);
  }
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
