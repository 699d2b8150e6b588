import { type Compiled, compile, restrict } from "../circuit/compile.js";
import { profileOf } from "../circuit/profile.js";
import { series } from "../circuit/series.js";
import type { FuelState } from "../fuel/index.js";
import type { Setting } from "../parts/law/index.js";
import { type DescentEntry, descend, kineticPressure } from "./descent.js";
import type { Way } from "./Intake.js";
import type { Supply } from "./Supply.js";

/** The delivery side under one fuel state, from the pump's outlet to the injection pump. */
export class Delivery {
  readonly shut: boolean;
  private readonly compiled: Compiled;
  private readonly fuel: FuelState;
  private readonly bore: number | null;

  constructor(supply: Supply, setting: Setting) {
    this.fuel = setting.fuel;
    this.compiled = compile(supply.delivery ?? series(), setting);
    this.shut = this.compiled.run.shut;
    this.bore = this.walk(0, 0).end.bore;
  }

  /** Sets the resistance over clean of the named filters; the others go back to their own. */
  restrict(restrictions: ReadonlyMap<string, number>): void {
    restrict(this.compiled, restrictions);
  }

  /** The way to the injection pump at a flow, m3/s. */
  way(flow: number): Way {
    return { stops: this.compiled.stops, flow };
  }

  /** Pressure lost to the injection pump at a flow, m3/s, the kinetic part counted, Pa; Infinity when shut. */
  loss(flow: number): number {
    return this.compiled.run.at(flow) + kineticPressure(flow, this.bore, this.fuel);
  }

  /** The pressure part by part at a flow, m3/s, from the pump's outlet pressure, Pa absolute. */
  descent(flow: number, outlet: number): DescentEntry[] {
    return this.walk(flow, outlet).entries;
  }

  private walk(flow: number, outlet: number) {
    return descend(profileOf(this.compiled.stops, this.fuel, flow), { total: outlet, bore: null }, this.fuel);
  }
}
