import { type Compiled, compile, restrict } from "../circuit/compile.js";
import { lastBore } from "../circuit/lastBore.js";
import { profileOf } from "../circuit/profile.js";
import { Run } from "../circuit/Run.js";
import { series } from "../circuit/series.js";
import type { FuelState } from "../fuel/index.js";
import { type Setting, Terms } from "../parts/law/index.js";
import { type DescentEntry, descend, kineticTerm } from "./descent.js";
import type { Way } from "./IntakeKinds.js";
import type { Supply } from "./Supply.js";

/** The delivery side under one fuel state, from the pump's outlet to the injection pump. */
export class Delivery {
  readonly shut: boolean;
  private readonly compiled: Compiled;
  private readonly fuel: FuelState;
  /** all of it folded, kinetic pressure at the injection pump included */
  readonly terms = new Terms();
  private readonly run: Run;

  constructor(supply: Supply, setting: Setting) {
    this.fuel = setting.fuel;
    this.compiled = compile(supply.delivery ?? series(), setting);
    this.shut = this.compiled.run.shut;
    this.terms.add(this.compiled.terms);
    this.terms.quadratic += kineticTerm(lastBore(this.compiled.stops), setting.fuel);
    this.run = new Run(this.terms);
  }

  /** Sets the resistance over clean of the named filters; the others go back to their own. */
  restrict(restrictions: ReadonlyMap<string, number>): void {
    restrict(this.compiled, restrictions);
    this.run.refold(restrictions);
  }

  /** The way to the injection pump at a flow, m3/s. */
  way(flow: number): Way {
    return { stops: this.compiled.stops, flow };
  }

  /** Pressure lost to the injection pump at a flow, m3/s, the kinetic part counted, Pa; Infinity when shut. */
  loss(flow: number): number {
    return this.run.at(flow);
  }

  /** The pressure part by part at a flow, m3/s, from the pump's outlet pressure, Pa absolute. */
  descent(flow: number, outlet: number): DescentEntry[] {
    return descend(profileOf(this.compiled.stops, this.fuel, flow), { total: outlet, bore: null }, this.fuel).entries;
  }
}
