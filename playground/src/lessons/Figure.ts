import type { System } from "@thirstline/spec/system";
import type { LifeAnswer, QuantityKind } from "@thirstline/study";

/** What the live model draws. */
export type Figure =
  /** path and descent, as on the sheet, of a system at its own temperature */
  { readonly draws: "path"; readonly system: System } | CurveFigure | ParticlesFigure;

/** One line, the horizontals that matter to it, and a point on it. */
export interface CurveFigure {
  readonly draws: "curve";
  readonly title: string;
  readonly x: Axis;
  readonly y: Axis;
  /** SI, x rising */
  readonly line: readonly Point[];
  /** a second line, dashed, such as what a wrong idea expects */
  readonly other?: { readonly label: string; readonly line: readonly Point[] };
  readonly levels: readonly {
    readonly label: string;
    readonly value: number;
    readonly tone: "limit" | "clean limit";
  }[];
  readonly at: Point;
}

/** How many particles are left at each place on the way, from the delivered fuel to the engine, as on the sheet. */
export interface ParticlesFigure {
  readonly draws: "particles";
  readonly title: string;
  readonly answer: LifeAnswer;
}

export interface Axis {
  readonly label: string;
  readonly kind: QuantityKind;
}

export type Point = readonly [x: number, y: number];
