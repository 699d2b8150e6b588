import type { Leaf } from "@thirstline/study/working";
import type { FigureShown } from "../words/wordsHtml.js";
import { figureButton } from "../working/figureButton.js";
import type { Subject } from "../working/Question.js";

/**
 * Live figures of what a question compares, named as workings name them.
 *
 * @param asked what they are asked with, such as a temperature, K
 */
export function choiceFigures(subject: Subject, asked: Leaf["asked"] = {}): FigureShown {
  return ({ figure, text, of = "now" }) => figureButton(text, { figure, of, asked }, subject);
}
