import { drawsOfFit } from "./drawsOfFit.js";
import type { Fitted, Weighed } from "./fitAll.js";
import type { Interval } from "./GaugeAnswer.js";
import type { Weighted } from "./lawWeights.js";
import { type Counted, quantileOf } from "./quantileOf.js";
import type { RunState } from "./runModel.js";
import { flat, type Shape } from "./shapes.js";

/** Laws that weigh less are left out: they move no end of an interval that anybody reads. */
export const LEAST = 0.01;

/** Draws of the state of a run over all laws, by their weights. */
export interface Averaged {
  readonly fitted: Fitted;
  readonly parameters: readonly number[];
  readonly state: RunState;
  readonly shape: Shape;
  readonly weight: number;
}

/**
 * What a run's state may be: draws of every law that weighs anything, each law's by its Akaike weight. So the spread holds
 * how far each law's constants are known, which law it is, and what gauge, demand, temperature and the file are off by.
 */
export function averaged(weighed: Weighed, laws: readonly Weighted[], seed: number): Averaged[] {
  const likely = laws.filter(({ weight }) => weight >= LEAST);
  return likely.flatMap(({ fitted, weight }) =>
    drawsOfFit(weighed, fitted, seed).map((draw) => ({
      fitted,
      parameters: draw.parameters,
      state: fitted.model.stateAt(draw.parameters),
      shape: fitted.model.shape,
      weight: weight * draw.weight,
    })),
  );
}

/** Ends between which a figure of the state lies nine times in ten, and its middle. */
export function intervalOf(draws: readonly Averaged[], of: (draw: Averaged) => number): Interval {
  const values = draws.map((draw): Counted => ({ value: of(draw), weight: draw.weight }));
  return { low: quantileOf(values, 0.05), middle: quantileOf(values, 0.5), high: quantileOf(values, 0.95) };
}

/** Running time, s, at which the lead comes to a resistance; Infinity where it never does. */
export function timeAtRatio({ shape, state }: Pick<Averaged, "shape" | "state">, ratio: number): number {
  if (shape === flat || !(state.load.rate > 0) || ratio === Infinity) return Infinity;
  return (shape.load(ratio) - state.load.start) / state.load.rate;
}
