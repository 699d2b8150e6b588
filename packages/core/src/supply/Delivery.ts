import { type Compiled, compile } from "../circuit/compile.js";
import { profileOf } from "../circuit/profile.js";
import { series } from "../circuit/series.js";
import type { Setting } from "../parts/law/index.js";
import { type DescentEntry, descend, kineticPressure } from "./descent.js";
import type { Supply } from "./Supply.js";

/** The delivery side under one fuel state, from the pump's outlet to the injection pump. */
export class Delivery {
  readonly shut: boolean;
  private readonly circuit;
  private readonly compiled: Compiled;
  private readonly setting: Setting;
  private readonly bore: number | null;

  constructor(supply: Supply, setting: Setting) {
    this.circuit = supply.delivery ?? series();
    this.setting = setting;
    this.compiled = compile(this.circuit, setting);
    this.shut = this.compiled.run.shut;
    this.bore = this.descentWithEnd(0, 0).end.bore;
  }

  /** Pressure lost to the injection pump at a flow, m3/s, the kinetic part counted, Pa; Infinity when shut. */
  loss(flow: number): number {
    return this.compiled.run.at(flow) + kineticPressure(flow, this.bore, this.setting.fuel);
  }

  /** The pressure part by part at a flow, m3/s, from the pump's outlet pressure, Pa absolute. */
  descent(flow: number, outlet: number): DescentEntry[] {
    return this.descentWithEnd(flow, outlet).entries;
  }

  private descentWithEnd(flow: number, outlet: number) {
    const profile = profileOf(this.circuit, this.compiled, this.setting, flow);
    return descend(profile, { total: outlet, bore: null }, this.setting.fuel);
  }
}
