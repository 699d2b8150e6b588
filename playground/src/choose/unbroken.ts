import type { Words } from "@thirstline/study";

/** A sentence whose figures keep their units beside them at a line's end; live ones do so by their style. */
export function unbroken(words: Words): Words {
  return words.map((piece) =>
    typeof piece === "string"
      ? piece.replace(/(\d) (?=(?:°C|°F|K|kPa|inHg|psi|h|mm|m|in|ft|L\/h|gal\/h|%|µm)(?![\p{L}\d]))/gu, "$1\u00a0")
      : piece,
  );
}
