import type { Words } from "@thirstline/study";

/** A sentence with its figures named, as a page would open them: "{vacuum|9.3 kPa} clean", or "{now: vacuum|9.3 kPa}". */
export function marked(words: Words): string {
  return words
    .map((piece) => {
      if (typeof piece === "string") return piece;
      const of = piece.of === undefined ? "" : `${piece.of}: `;
      return `{${of}${piece.figure}|${piece.text}}`;
    })
    .join("");
}
