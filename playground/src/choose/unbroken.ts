/** A sentence whose figures keep their units beside them at a line's end. */
export function unbroken(text: string): string {
  return text.replace(/(\d) (?=(?:°C|°F|K|kPa|inHg|psi|h|mm|m|in|ft|L\/h|gal\/h|%|µm)(?![\p{L}\d]))/gu, "$1\u00a0");
}
