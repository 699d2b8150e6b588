import type { FigureMaker } from "./figures/FigureMaker.js";
import type { Step } from "./Step.js";

/** A figure that can be asked for. */
export interface FigureListed {
  readonly name: string;
  readonly group: string;
  /** its working's last step; null where making it takes long, and it is made when asked for */
  readonly step: Step | null;
}

/** Figures as a list shows them: those with a value here, and, without it, those that take long to make. */
export function listed(makers: readonly FigureMaker[]): FigureListed[] {
  return makers.flatMap(({ name, group, make, slow }): FigureListed[] => {
    if (slow) return [{ name, group, step: null }];
    const step = make();
    return step && Number.isFinite(step.value) ? [{ name, group, step }] : [];
  });
}
