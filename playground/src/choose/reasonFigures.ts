import type { SwapReason, UnitSystem } from "@thirstline/study";
import type { FigureShown } from "../words/wordsHtml.js";
import { checkLeaf } from "../working/checkFigures.js";
import { figureButton } from "../working/figureButton.js";
import { leavesIn } from "../working/liveFigures.js";
import type { Subject } from "../working/Question.js";

/** Live figures of why a swap is judged as it is; all are of the system with the other element. */
export function reasonFigures(reason: SwapReason, subject: Subject, units: UnitSystem): FigureShown {
  const point = "point" in reason ? reason.point : null;
  // What a verdict or a life says for itself names no system.
  const leafOf = point ? checkLeaf(point, units) : leavesIn("life");
  const asked = point ? { temperature: point.temperature } : {};
  return ({ figure, text, of }) => {
    const leaf = of === undefined ? leafOf(figure, text) : { figure, asked: {} };
    return leaf && figureButton(text, { ...leaf, asked: { ...leaf.asked, ...asked }, of: "changed" }, subject);
  };
}
