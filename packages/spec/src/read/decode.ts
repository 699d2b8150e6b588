import { bounds } from "./bounds.js";

/** The part of the platform's decoder used here; Node and browsers both have it. */
declare const TextDecoder: new (
  encoding: string,
  options: { readonly fatal: boolean },
) => { decode(bytes: Uint8Array): string };

/** Why a file's bytes are no text to read, with the line where known. */
export interface DecodeFault {
  readonly code: "too large" | "not UTF-8";
  readonly line: number;
  readonly message: string;
}

/** The text of a file, or why there is none. A byte order mark is left out. */
export function decode(given: string | Uint8Array): { readonly text: string } | { readonly fault: DecodeFault } {
  const size = given.length; // of a text in UTF-16 units: never more than its bytes in UTF-8
  if (size > bounds.bytes) {
    const unit = typeof given === "string" ? "characters" : "bytes";
    const message = `${size} ${unit}; a system file has at most ${bounds.bytes}, and one machine needs far less: is it the right file?`;
    return { fault: { code: "too large", line: 1, message } };
  }
  if (typeof given === "string") return { text: given.replace(/^\ufeff/, "") };
  const text = strictly(given);
  if (text !== undefined) return { text };
  const message = "this line is not UTF-8 text; save the file as UTF-8";
  return { fault: { code: "not UTF-8", line: firstBadLine(given), message } };
}

function strictly(bytes: Uint8Array): string | undefined {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

/** A line feed is never part of a longer character in UTF-8, so lines can be tried one by one. */
function firstBadLine(bytes: Uint8Array): number {
  let start = 0;
  for (let line = 1; ; line++) {
    const feed = bytes.indexOf(10, start);
    const end = feed === -1 ? bytes.length : feed;
    if (strictly(bytes.subarray(start, end)) === undefined || feed === -1) return line;
    start = feed + 1;
  }
}
