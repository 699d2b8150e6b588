import type { FigureMaker } from "../figures/FigureMaker.js";
import type { Step } from "../Step.js";
import { fromFile } from "../worked.js";
import { costFigures } from "./costFigures.js";
import { inHandAtChange } from "./inHandAtChange.js";
import type { SideGiven } from "./SideGiven.js";
import { starvesStep } from "./starvesStep.js";

/** Figures of one side of a swap beside those of `check` and `life`. */
export function sideFigures(given: SideGiven): FigureMaker[] {
  const { system, temperatures } = given;
  const figure = (name: string, make: () => Step | null): FigureMaker => ({
    group: "Side by side",
    name,
    make,
    slow: true,
  });
  const [coldest, warmest] = [temperatures[0] as number, temperatures.at(-1) as number];
  return [
    figure("service interval", () => {
      const { service } = system;
      const plain = { name: "service interval", unit: "s", kind: "running time" } as const;
      return service ? fromFile("service.interval", { ...plain, value: service.interval }) : null;
    }),
    figure("starves below", () => starvesStep(system, warmest)),
    figure("in hand at the change", () => inHandAtChange(system, coldest)),
    ...costFigures(given),
  ];
}
