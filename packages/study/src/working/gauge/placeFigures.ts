import type { ReadingPlace } from "../../gauge/GaugeAnswer.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { figuresIn } from "../figures/figuresIn.js";
import { countedStep } from "./countedStep.js";

/** Where a reading stands. */
export function placeFigures({ row, line }: ReadingPlace): FigureMaker[] {
  const figure = figuresIn("Where it stands");
  return [
    figure("row", () => countedStep("row", row, "counted from the first reading, which is 1")),
    figure("line of the file", () =>
      line === null ? null : countedStep("line of the file", line, "counted from the top of the file, which is 1"),
    ),
  ];
}
