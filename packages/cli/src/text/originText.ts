import { type Step, shownLetter } from "@thirstline/study/working";

/** Where a figure comes from, in a few words. */
export function originText({ origin }: Step): string {
  switch (origin.by) {
    case "formula":
      return `worked out: ${origin.formula.name}`;
    case "file":
      return `file: ${origin.path}`;
    case "asked":
      return `asked for: --${origin.option}`;
    case "source":
      return origin.source;
    case "words":
      return origin.words;
    case "search":
      return `searched for: ${origin.words}`;
    case "draws":
      return origin.words;
  }
}

/** A letter of a formula with the place of its value, where it has several. */
export function inputLetter(letter: string, list: boolean, at: number): string {
  return list ? `${shownLetter(letter)}_${at + 1}` : shownLetter(letter);
}
