import type { FigureShown } from "../../words/wordsHtml.js";
import { figureButton } from "../../working/figureButton.js";
import { leavesIn } from "../../working/liveFigures.js";
import type { Subject } from "../../working/Question.js";

/** What is said of a machine in the words of its life. */
const ofLife = leavesIn("life");

/**
 * Live figures of a yard, named as workings name them.
 *
 * @param of "machine 0", "part 0" and on, by the place in the answer
 */
export function fleetFigures(subject: Subject, of: string): FigureShown {
  return ({ figure, text }) => figureButton(text, { ...(ofLife(figure, text) ?? { figure, asked: {} }), of }, subject);
}
