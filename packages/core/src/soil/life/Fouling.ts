import { resistanceRatio } from "../loading/resistanceRatio.js";
import type { Vector } from "./dormandPrince.js";
import type { SoilElement } from "./SoilElement.js";

/**
 * Resistance over clean at which an element counts as plugged: side by side with others it then passes a billionth of what
 * it did. A true infinity would lie one rounding away from here, and nothing could be followed across it.
 */
export const PLUGGED = 1e9;

/**
 * What is on elements, as one state: soil on each, kg, and where one swells with water, the water each keeps, kg, after
 * all of that; and the restriction that comes of it. Ratios of soil and water multiply: both narrow the same pores.
 */
export class Fouling {
  /** whether water is followed */
  readonly wet: boolean;
  readonly start: Vector;
  private readonly elements: readonly SoilElement[];
  /** one map, filled anew each time: a life asks thousands of times */
  private readonly found = new Map<string, number>();

  constructor(elements: readonly SoilElement[]) {
    this.elements = elements;
    this.wet = elements.some((element) => element.swells);
    const soil = elements.map((element) => element.soil);
    this.start = Float64Array.from(this.wet ? [...soil, ...elements.map(({ water = 0 }) => water)] : soil);
  }

  /** Resistance over clean of each element, by name; good until the next call. */
  restrictions(state: Vector): ReadonlyMap<string, number> {
    const { elements, found } = this;
    for (let at = 0; at < elements.length; at++) {
      const { name, law, swells } = elements[at] as SoilElement;
      const bySoil = law ? resistanceRatio(law, state[at] as number) : 1;
      const ratio = swells ? bySoil * resistanceRatio(swells, this.waterOn(state, at)) : bySoil;
      found.set(name, Math.min(PLUGGED, ratio));
    }
    return found;
  }

  /** Water an element has kept, kg; 0 where water is not followed. */
  waterOn(state: Vector, at: number): number {
    return this.wet ? (state[this.elements.length + at] as number) : 0;
  }
}
