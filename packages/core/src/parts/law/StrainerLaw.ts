import type { FuelState } from "../../fuel/index.js";
import type { BandEnd } from "../Band.js";
import { armourCannon, brundrett, ehrhardt } from "../screen/index.js";
import type { Strainer } from "../strainer.js";
import type { OwnLaw } from "./OwnLaw.js";

const laws = [armourCannon, ehrhardt, brundrett];
const place = { low: 0, middle: 1, high: 2 } as const;

/** Drop of a strainer: the lowest, middle or highest of three published screen laws at that flow. */
export class StrainerLaw implements OwnLaw {
  flow = 0;
  drop = 0;
  slope = 0;
  readonly settled = true;
  private readonly part: Strainer;
  private readonly fuel: FuelState;
  private readonly place: number;

  constructor(part: Strainer, fuel: FuelState, end: BandEnd) {
    this.part = part;
    this.fuel = fuel;
    this.place = place[end];
  }

  update(): void {
    const { flow } = this;
    const velocity = Math.abs(flow) / this.part.area;
    const drop = this.dropAt(velocity);
    // The slope only steers the solver, so a difference over a millionth serves; at rest the creeping limit is taken.
    const step = Math.max(velocity * 1e-6, 1e-15);
    this.slope = (this.dropAt(velocity + step) - drop) / (step * this.part.area);
    this.drop = flow < 0 ? -drop : drop;
  }

  private dropAt(velocity: number): number {
    const drops = laws.map((law) => law(this.part, this.fuel, velocity)).sort((a, b) => a - b);
    return drops[this.place] ?? 0;
  }
}
