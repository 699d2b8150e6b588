import type { Step } from "@thirstline/study/working";

/** Where a figure comes from, in a few words. */
export function originWords({ origin }: Step): string {
  switch (origin.by) {
    case "formula":
      return `worked out: ${origin.formula.name}`;
    case "file":
      return `in the file at ${origin.path}`;
    case "asked":
      return `asked for: ${origin.option}`;
    case "source":
      return origin.source;
    case "words":
    case "draws":
      return origin.words;
    case "search":
      return `searched for: ${origin.words}`;
  }
}

/** Whether there is more to be seen behind a figure than these words. */
export function leadsOn({ origin }: Step): boolean {
  switch (origin.by) {
    case "formula":
    case "search":
      return true;
    case "words":
    case "draws":
      return origin.from.length > 0;
    default:
      return false;
  }
}

export function sentenceOf(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}${/[.!?]$/.test(words) ? "" : "."}`;
}
