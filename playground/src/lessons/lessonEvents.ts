import type { Stage } from "./progress.js";

/** Says how far the learner has come with the lesson shown. */
export class StageEvent extends Event {
  readonly stage: Stage;

  constructor(stage: Stage) {
    super("lesson-stage", { bubbles: true, composed: true });
    this.stage = stage;
  }
}

/** Says what the learner committed to: SI, or the place of a choice. */
export class PredictEvent extends Event {
  readonly prediction: number;

  constructor(prediction: number) {
    super("lesson-predict", { bubbles: true, composed: true });
    this.prediction = prediction;
  }
}

declare global {
  interface HTMLElementEventMap {
    "lesson-stage": StageEvent;
    "lesson-predict": PredictEvent;
  }
}
