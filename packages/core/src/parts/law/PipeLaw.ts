import type { FuelState } from "../../fuel/index.js";
import { FrictionLaw, LAMINAR_END, type Passage } from "../friction/index.js";
import type { PartLaw } from "./OwnLaw.js";

/** Friction of a round line under one fuel state. */
export class PipeLaw implements PartLaw {
  flow = 0;
  drop = 0;
  slope = 0;
  readonly settled = true;
  readonly kinked = false;
  readonly stepAt: number;
  private readonly reynoldsPerFlow: number;
  private readonly dropPerFriction: number;
  private readonly friction: FrictionLaw;

  /** @param pipe length, m; bore, m; roughness, m */
  constructor(
    pipe: { readonly length: number; readonly bore: number; readonly roughness: number },
    fuel: FuelState,
    passage: Passage,
  ) {
    const { length, bore } = pipe;
    this.reynoldsPerFlow = 4 / (Math.PI * bore * fuel.kinematicViscosity);
    // f length/bore density velocity^2 / 2, with velocity = Re viscosity/bore
    this.dropPerFriction = (fuel.density * fuel.kinematicViscosity ** 2 * length) / (2 * bore ** 3);
    // A rounding less, so that the flow itself lies below the step whichever way its Reynolds number is rounded.
    this.stepAt = passage === "early" ? (LAMINAR_END / this.reynoldsPerFlow) * (1 - 2 ** -51) : Infinity;
    this.friction = new FrictionLaw(pipe.roughness / bore, passage);
  }

  update(): void {
    const { friction, flow } = this;
    friction.reynolds = Math.abs(flow) * this.reynoldsPerFlow;
    friction.update();
    const drop = this.dropPerFriction * friction.value;
    this.drop = flow < 0 ? -drop : drop;
    this.slope = this.dropPerFriction * this.reynoldsPerFlow * friction.slope;
  }
}
