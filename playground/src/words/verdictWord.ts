import type { Verdict } from "@thirstline/study";

const words: Readonly<Record<Verdict, string>> = {
  holds: "Holds",
  tight: "Tight",
  starves: "Starves",
  "cannot say": "Cannot say",
};

/** A verdict in a word. */
export function verdictWord(verdict: Verdict): string {
  return words[verdict];
}
