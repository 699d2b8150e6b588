import type { FigureShown } from "../../words/wordsHtml.js";
import { figureButton } from "../../working/figureButton.js";
import type { Subject } from "../../working/Question.js";

/**
 * Live figures of readings, named as workings name them.
 *
 * @param own what a figure belongs to that does not say so: "suction", "finding 0", "outlier 2"
 */
export function gaugeFigures(subject: Subject, own = "readings"): FigureShown {
  return ({ figure, text, of = own }) => figureButton(text, { figure, of, asked: {} }, subject);
}
