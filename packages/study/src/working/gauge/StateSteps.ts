import { fileNoise } from "../../gauge/noise.js";
import * as formulas from "../formulas/gauge.js";
import type { Step } from "../Step.js";
import { fromSource, inWords, worked } from "../worked.js";
import type { FitScene } from "./FitScene.js";
import { loadStep, ratioStep } from "./lawSteps.js";
import { startStep, timeStep } from "./readingSteps.js";
import { zeroSpreadStep } from "./zeroSteps.js";

const SECOND = inWords("so that one reading alone has a rate", {
  name: "a second",
  value: 1,
  unit: "s",
  kind: "running time",
});

/** What a law says of a run at some parameters, each figure a step. */
export class StateSteps {
  readonly fit: FitScene;
  /** what is fitted, by its place */
  readonly parameter: (place: number) => Step;
  private readonly steps = new Map<string, Step>();

  constructor(fit: FitScene, parameter: (place: number) => Step) {
    this.fit = fit;
    this.parameter = parameter;
  }

  /** Whether anything grows. */
  get grows(): boolean {
    return this.fit.fitted.model.shape.law !== "none";
  }

  /** Demand over the file's. */
  get demand(): Step {
    return this.once("demand", () => {
      const a = fromSource("common practice, no source", {
        name: "how far the file's demand and resistances may be off",
        value: fileNoise.demand,
        unit: "1",
        kind: "ratio",
      });
      return worked(formulas.fittedDemand, { a, d: this.parameter(0) });
    });
  }

  /** What all readings are off by, so turned that soil makes them grow. */
  get zero(): Step {
    return this.once("zero", () => worked(formulas.fittedZero, { s: zeroSpreadStep(this.fit), z: this.parameter(1) }));
  }

  /** Resistance at the beginning. */
  get begun(): Step {
    return this.once("begun", () => {
      const { start } = this.fit.weighed.run;
      if (!start.known) return worked(formulas.begunRatio, { b: this.parameter(this.grows ? 3 : 2) });
      const words = start.ratio === 1 ? "the elements were new" : "by the soil that the file states";
      const plain = {
        name: "resistance over clean at the beginning",
        value: start.ratio,
        unit: "1",
        kind: "plain",
      } as const;
      return inWords(words, plain);
    });
  }

  /** Load at the beginning. */
  get from(): Step {
    return this.once("from", () => loadStep(this.shape, this.begun));
  }

  /** Load that comes in a second. */
  get rate(): Step {
    return this.once("rate", () => {
      const ended = worked(formulas.endedRatio, { r_0: this.begun, g: this.parameter(2) });
      const { fit } = this;
      const last = fit.instants.at(-1);
      const T = last ? timeStep(fit, last) : startStep(fit);
      return worked(formulas.loadRate, {
        a: this.from,
        b: loadStep(this.shape, ended),
        s: SECOND,
        T,
        t: startStep(fit),
      });
    });
  }

  /** Resistance over clean of the element that goes first, at a running time. */
  ratioAt(t: Step): Step {
    if (!this.grows) return this.begun;
    return this.once(`ratio ${t.value}`, () => {
      const l = worked(formulas.loadAt, { a: this.from, k: this.rate, t, s: startStep(this.fit) });
      return ratioStep(this.shape, l);
    });
  }

  private get shape() {
    return this.fit.fitted.model.shape;
  }

  private once(name: string, make: () => Step): Step {
    const known = this.steps.get(name) ?? make();
    this.steps.set(name, known);
    return known;
  }
}
