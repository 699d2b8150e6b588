import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";

/** Where a stretch begins. */
export interface Start {
  readonly scene: Scene;
  /** total pressure there, absolute */
  readonly pressure: () => Step;
  /** what has been spent since then */
  readonly spent: readonly (() => Step | null)[];
  readonly bore: Step | null;
  readonly flow: Step;
  readonly depth: number;
  /** a branch by itself, in which a check valve that nothing flows through counts as just opening */
  readonly alone?: true;
  /** names of the rows still to come, in order */
  readonly names: Iterator<string>;
}
