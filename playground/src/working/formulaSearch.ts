import { type Formula, shownLetter } from "@thirstline/study/working";

/** Whether every word that is looked for stands somewhere in what is said of a formula. */
export function isAbout(formula: Formula, topic: string, wanted: string): boolean {
  const symbols = [formula.result, ...Object.values(formula.symbols)];
  const text = [topic, formula.id, formula.name, formula.holds, formula.source]
    .concat(symbols.flatMap(({ letter, meaning }) => [letter, shownLetter(letter), meaning]))
    .join(" ")
    .toLowerCase();
  return wanted
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}
