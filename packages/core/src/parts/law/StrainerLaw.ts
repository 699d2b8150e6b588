import type { FuelState } from "../../fuel/index.js";
import type { BandEnd } from "../Band.js";
import { armourCannonTerms } from "../screen/armourCannon.js";
import { brundrettDrop } from "../screen/brundrett.js";
import { clothGeometry } from "../screen/clothGeometry.js";
import { ehrhardtTerms } from "../screen/ehrhardt.js";
import type { ScreenTerms } from "../screen/ScreenFluid.js";
import type { Strainer } from "../strainer.js";
import type { PartLaw } from "./OwnLaw.js";

/** Drop of a strainer: the lowest, middle or highest of three published screen laws at that flow. */
export class StrainerLaw implements PartLaw {
  flow = 0;
  drop = 0;
  slope = 0;
  readonly settled = true;
  readonly kinked = false;
  readonly stepAt = Infinity;
  private readonly part: Strainer;
  private readonly fuel: FuelState;
  private readonly end: BandEnd;
  private readonly openArea: number;
  private readonly first: ScreenTerms;
  private readonly second: ScreenTerms;

  constructor(part: Strainer, fuel: FuelState, end: BandEnd) {
    this.part = part;
    this.fuel = fuel;
    this.end = end;
    this.openArea = clothGeometry(part).openArea;
    this.first = armourCannonTerms(part, fuel);
    this.second = ehrhardtTerms(part, fuel);
  }

  update(): void {
    const { area } = this.part;
    const velocity = Math.abs(this.flow) / area;
    const drop = this.dropAt(velocity);
    // The slope only steers the solver, so a difference over a millionth serves; at rest the creeping limit is taken.
    const step = Math.max(velocity * 1e-6, 1e-15);
    this.drop = this.flow < 0 ? -drop : drop;
    this.slope = (this.dropAt(velocity + step) - drop) / (step * area);
  }

  private dropAt(velocity: number): number {
    const a = (this.first.viscous + this.first.inertial * velocity) * velocity;
    const b = (this.second.viscous + this.second.inertial * velocity) * velocity;
    const c = brundrettDrop({ wire: this.part.wire, openArea: this.openArea }, this.fuel, velocity);
    if (this.end === "low") return Math.min(a, b, c);
    if (this.end === "high") return Math.max(a, b, c);
    return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  }
}
