import { figureOfKey, type Leaf } from "@thirstline/study/working";
import type { FigureShown } from "../words/wordsHtml.js";
import { figureButton } from "./figureButton.js";
import type { Subject } from "./Question.js";

/** Tells which working a live figure of a sentence opens; null where it opens none. `text` is how it reads. */
export type LeafOf = (key: string, text: string) => Leaf | null;

/** The live figures of a sentence that answers a question; `own` are those that only the answer itself can tell. */
export function leavesIn(
  question: Parameters<typeof figureOfKey>[0],
  own: Readonly<Record<string, Leaf | undefined>> = {},
): LeafOf {
  return (key) => own[key] ?? figureOfKey(question, key);
}

/** Live figures as buttons that open their workings; `subject` is what they are of, where that is not the sheet's system. */
export function asButtons(leafOf: LeafOf, subject: Subject | null = null): FigureShown {
  return ({ figure, text }) => {
    const leaf = leafOf(figure, text);
    return leaf && figureButton(text, leaf, subject);
  };
}
