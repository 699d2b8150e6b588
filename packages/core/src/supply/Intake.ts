import { Bank } from "../circuit/Bank.js";
import { type Compiled, compile, restrict } from "../circuit/compile.js";
import { lastBore } from "../circuit/lastBore.js";
import { profileOf } from "../circuit/profile.js";
import { Run } from "../circuit/Run.js";
import { series } from "../circuit/series.js";
import { type Setting, Terms } from "../parts/law/index.js";
import { descend, kineticTerm, type LowPoint, lowestOf } from "./descent.js";
import type { IntakeDescent, Way } from "./IntakeKinds.js";
import type { Supply } from "./Supply.js";
import { sourcePressure } from "./sourcePressure.js";
import type { Tank } from "./tank.js";
import { type Walk, walkAlong } from "./walkAlong.js";

/** A tank fuel can come from, with its path folded. */
interface Source {
  readonly tank: Tank;
  readonly path: Compiled;
  /** total pressure at the pick-up, Pa absolute */
  readonly pressure: number;
}

/**
 * The suction side under one fuel state, from the fuel's surface to the pump's inlet. Several tanks feed one joint; each
 * gives what the pressure there lets it, and a low one may take fuel instead. A tank whose vent is blocked gives none in
 * steady flow: the vacuum in it grows until it stops.
 */
export class Intake {
  /** whether nothing can pass: a shut part, or no tank that can give */
  readonly shut: boolean;
  /** all of it folded, kinetic pressure at the pump's inlet included: its drop is that inlet's pressure, turned round */
  readonly terms: Terms;
  private readonly run: Run;
  private readonly setting: Setting;
  private readonly sources: readonly Source[];
  private readonly joint: Bank | null;
  /** least of what the tanks need at no flow, Pa; the joint's drop is counted from there */
  private readonly base: number;
  private readonly main: Compiled;
  private readonly bore: number | null;

  constructor(supply: Supply, setting: Setting) {
    this.setting = setting;
    this.main = compile(supply.suction, setting);
    this.sources = supply.tanks.flatMap((tank): Source[] => {
      const path = compile(tank.path ?? series(), setting);
      const pressure = sourcePressure(tank, supply.ambientPressure, setting.fuel.density);
      return pressure === null || path.run.shut ? [] : [{ tank, path, pressure }];
    });
    this.shut = this.main.run.shut || this.sources.length === 0;
    const heads = this.sources.map(({ path, pressure }) => path.run.constant - pressure);
    this.base = Math.min(...heads);
    // One tank needs no joint, and its path need not resist.
    const runs = this.sources.map(({ path }) => path.run);
    const over = heads.map((head) => head - this.base);
    this.joint = runs.length < 2 ? null : new Bank(runs, over);
    const [first] = this.sources;
    this.bore = lastBore(this.main.stops) ?? (this.joint || !first ? null : lastBore(first.path.stops));
    this.terms = this.folded();
    this.run = new Run(this.terms);
  }

  /** Static pressure at the pump's inlet, as a gauge there reads it, Pa absolute; -Infinity when nothing can pass. */
  pressure(flow: number): number {
    return this.shut ? -Infinity : -this.run.at(flow);
  }

  /** The pressure part by part at a flow, m3/s. */
  descent(flow: number): IntakeDescent {
    const { fuel } = this.setting;
    const flows = this.joint ? this.joint.flows(flow) : [flow];
    const ways = this.sources.map(({ path, pressure }, at) => {
      const profile = profileOf(path.stops, fuel, flows[at] ?? 0);
      return descend(profile, { total: pressure, bore: null }, fuel);
    });
    const trunk = this.joint || !ways[0] ? { total: this.jointPressure(flow), bore: null } : ways[0].end;
    const main = descend(profileOf(this.main.stops, fuel, flow), trunk, fuel);
    const points = [
      ...this.sources.map((source): LowPoint => ({ pressure: source.pressure, after: null })),
      ...[...ways, main].flatMap((way) => lowestOf(way.entries) ?? []),
    ];
    return {
      tanks: this.sources.map(({ tank, pressure }, at) => ({
        tank,
        flow: flows[at] ?? 0,
        source: pressure,
        descent: ways[at]?.entries ?? [],
      })),
      suction: main.entries,
      joint: trunk.total ?? -Infinity,
      lowest: this.shut ? null : points.reduce((low, one) => (one.pressure < low.pressure ? one : low)),
      bore: main.end.bore,
    };
  }

  /** Sets the resistance over clean of the named filters; the others go back to their own. */
  restrict(restrictions: ReadonlyMap<string, number>): void {
    for (const { path } of this.sources) restrict(path, restrictions);
    restrict(this.main, restrictions);
    this.run.refold(restrictions);
  }

  /** The ways from each tank to the joint, with their flows, and the way on from there, at a suction flow, m3/s. */
  ways(flow: number): { readonly tanks: readonly Way[]; readonly main: Way } {
    const flows = this.joint ? this.joint.flows(flow) : [flow];
    return {
      tanks: this.sources.map(({ path }, at) => ({ stops: path.stops, flow: flows[at] ?? 0 })),
      main: { stops: this.main.stops, flow },
    };
  }

  /** Lowest static pressure anywhere on the way at a flow, m3/s, Pa absolute; -Infinity when nothing can pass. */
  lowest(flow: number): number {
    if (this.shut) return -Infinity;
    const { fuel } = this.setting;
    const flows = this.joint ? this.joint.flows(flow) : [flow];
    const walks = this.sources.map(({ path, pressure }, at): Walk => {
      const walk = { total: pressure, bore: null, lowest: pressure };
      // Beside other tanks, one without flow may be held shut, as a branch may.
      walkAlong(path.stops, fuel, flows[at] ?? 0, walk, this.joint !== null);
      return walk;
    });
    const least = Math.min(...walks.map((walk) => walk.lowest));
    const [first] = walks;
    const main = first && !this.joint ? first : { total: this.jointPressure(flow), bore: null, lowest: least };
    return walkAlong(this.main.stops, fuel, flow, main) ? Math.min(least, main.lowest) : -Infinity;
  }

  private folded(): Terms {
    const terms = new Terms();
    const [first] = this.sources;
    if (this.joint) {
      terms.banks.push(this.joint);
      terms.constant += this.base;
      terms.oneWay ||= this.joint.oneWay;
    } else if (first) {
      terms.add(first.path.terms);
      terms.constant -= first.pressure;
    }
    terms.add(this.main.terms);
    terms.quadratic += kineticTerm(this.bore, this.setting.fuel);
    terms.shut ||= this.shut;
    return terms;
  }

  /** Total pressure where the tanks meet, Pa absolute; -Infinity without a joint, where no tank can give. */
  private jointPressure(flow: number): number {
    return this.joint ? -(this.base + this.joint.at(flow)) : -Infinity;
  }
}
