import { type Choice, choiceFigures, choiceWorking, isChoiceFigure, listed } from "@thirstline/study/working";
import type { Subject } from "./Subject.js";
import { subjectLabel } from "./subjectLabel.js";

/** How the systems that a question compares are told of. */
export interface ChoiceLook {
  /** what one of them is, in words */
  readonly aboutOf: (of: string) => string | null;
  /** K; what figures that any system has are asked at, each alone; empty for the question's own */
  readonly temperatures?: readonly number[];
  /** whether it stands for no system of its own, and has the question's figures only */
  readonly isBare?: (of: string) => boolean;
}

/** What the figures of a question that compares systems are of. */
export function choiceSubjects(
  choice: Choice,
  { aboutOf, temperatures = [], isBare = () => false }: ChoiceLook,
): Subject[] {
  const ways = temperatures.length === 0 ? [{}] : temperatures.map((temperature) => ({ temperature }));
  return [...choice.variants].map(([of, { own }]): Subject => {
    const label = subjectLabel(of);
    const names = own.map(({ name }) => name);
    return {
      label,
      about: aboutOf(of),
      name: `${choice.file.name}, ${label}`,
      own: names,
      general: !isBare(of),
      brief: () => listed(own),
      list: () => (isBare(of) ? listed(own) : choiceFigures(choice, of, ways[0])),
      has: (figure) =>
        isBare(of) ? names.includes(figure) : isChoiceFigure(choice, { of, figure, asked: ways[0] ?? {} }),
      workings: (figure) =>
        // What the question has of its own rests on all temperatures alike.
        (names.includes(figure) ? [{}] : ways).map((asked) => choiceWorking(choice, { of, figure, asked })),
    };
  });
}
