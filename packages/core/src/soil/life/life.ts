import { closeBracket } from "../../closeBracket.js";
import { InputError } from "../../InputError.js";
import { requireAtLeast, requireMoreThan } from "../../require.js";
import { SupplyModel } from "../../supply/index.js";
import { resistanceRatio } from "../loading/resistanceRatio.js";
import { CatchBalance, type DemandFlows } from "./CatchBalance.js";
import { type Vector, wayFrom } from "./integrate.js";
import type { DirtyDelivery, DutyLoad, DutyPhase, Life, LifeGiven, LifeMoment } from "./LifeKinds.js";
import { WorstMargins } from "./WorstMargins.js";

/**
 * How long filter elements last: soil is followed on each, flows split anew as elements foul, and the moment the first
 * limit is met at the worst duty point is found to a millionth of an hour, not to the nearest step.
 *
 * Assumed: what an element catches does not change as it fills; fuel arrives equally dirty throughout save for one stated
 * delivery; loads are mixed finely within a phase. With `delivered fuel` held fixed the tank is in its steady balance.
 *
 * @param given see `LifeGiven`
 * @throws InputError for a horizon or duration not above 0, loads whose shares do not add up to 1, soil below 0
 * @example
 * life({ supply, elements, phases, delivered, held: "delivered fuel", points, limits, horizon: 5000 * 3600 }).end?.time
 */
export function life(given: LifeGiven): Life {
  requireGiven(given);
  const walk = new Walk(given);
  const moments: LifeMoment[] = [walk.moment()];
  if (walk.margin(walk.soil) < 0) return { end: walk.ended(), moments };
  for (let at = 0; walk.time < given.horizon; at++) {
    const phase = given.phases[at % given.phases.length] as DutyPhase;
    const end = walk.through(phase);
    moments.push(walk.moment());
    if (end) return { end, moments };
  }
  return { end: null, moments };
}

/** Where the elements have got to. */
class Walk {
  time = 0;
  burnt = 0;
  soil: Vector;
  private readonly given: LifeGiven;
  private readonly margins: WorstMargins;
  private readonly balance: CatchBalance;
  private readonly models: ReadonlyMap<DutyPhase, SupplyModel>;
  private dirty: DirtyDelivery | undefined;

  constructor(given: LifeGiven) {
    const { supply, elements, phases, end = "middle" } = given;
    this.given = given;
    this.soil = Float64Array.from(elements, (element) => element.soil);
    this.dirty = given.dirty;
    this.margins = new WorstMargins(given);
    const efficiencies = elements.flatMap(({ name, efficiency }) => (efficiency ? [[name, efficiency] as const] : []));
    this.balance = new CatchBalance(given.delivered, new Map(efficiencies), given.held);
    this.models = new Map(
      phases.map((phase) => [phase, new SupplyModel(supply, { fuel: phase.fuel, passage: "smooth", end })]),
    );
  }

  /** Goes on through a phase, to the horizon at most; returns the end if it comes first. */
  through(phase: DutyPhase): Life["end"] {
    let left = Math.min(phase.duration, this.given.horizon - this.time);
    while (left > 0) {
      const toDirty = this.dirty ? this.dirty.at - this.time : Infinity;
      if (toDirty <= 0) {
        this.takeDirty(phase);
        if (this.margin(this.soil) < 0) return this.ended();
        continue;
      }
      const stretch = Math.min(left, toDirty);
      const end = this.stretch(phase, stretch);
      if (end) return end;
      left -= stretch;
    }
    return null;
  }

  /** How far from the first limit, with this much soil, kg. */
  margin(soil: Vector): number {
    return this.margins.at(this.restrictions(soil)).margin;
  }

  moment(): LifeMoment {
    const restriction = [...this.restrictions(this.soil).values()];
    return { time: this.time, burnt: this.burnt, soil: [...this.soil], restriction };
  }

  /** The end, here and now. */
  ended(): NonNullable<Life["end"]> {
    return { ...this.moment(), by: this.margins.at(this.restrictions(this.soil)).by };
  }

  private stretch(phase: DutyPhase, duration: number): Life["end"] {
    const burn = phase.loads.reduce((sum, load) => sum + load.share * load.demand.burn, 0);
    const way = wayFrom((soil, into) => this.rates(phase, soil, into), this.soil, duration);
    const marginAt = (time: number) => {
      const soil = way(time);
      return soil ? this.margin(soil) : -Infinity;
    };
    const last = marginAt(duration);
    const from = { at: 0, value: this.margin(this.soil) };
    const reached = last >= 0 ? duration : closeBracket(marginAt, from, { at: duration, value: last }, 1e-12).low;
    this.soil = way(reached) ?? this.soil;
    this.time += reached;
    this.burnt += burn * reached;
    return last >= 0 ? null : this.ended();
  }

  /** The dirty delivery's extra soil leaves the tank within hours; what each element gets of it is taken at once. */
  private takeDirty(phase: DutyPhase): void {
    const { volume, extra } = this.dirty as DirtyDelivery;
    this.dirty = undefined;
    const { balance } = this;
    this.update(phase, (phase.loads[0] as DutyLoad).demand, this.soil);
    const brought = extra.masses.map((mass) => mass * volume);
    this.soil = this.soil.map((soil, at) => soil + balance.ofPulse(this.given.elements[at]?.name ?? "", brought));
  }

  private rates(phase: DutyPhase, soil: Vector, into: Vector): boolean {
    // A trial step may overshoot into less soil than none.
    if (soil.some((value) => value < 0)) return false;
    into.fill(0);
    for (const load of phase.loads) {
      this.update(phase, load.demand, soil);
      this.given.elements.forEach(({ name }, at) => {
        into[at] = (into[at] as number) + load.share * this.balance.rate(name);
      });
    }
    return into.every(Number.isFinite);
  }

  private update(phase: DutyPhase, demand: DemandFlows, soil: Vector): void {
    const model = this.models.get(phase) as SupplyModel;
    model.restrict(this.restrictions(soil));
    this.balance.update(model, demand);
  }

  private restrictions(soil: Vector): ReadonlyMap<string, number> {
    return new Map(
      this.given.elements.map(({ name, law }, at) => [name, law ? resistanceRatio(law, soil[at] as number) : 1]),
    );
  }
}

function requireGiven(given: LifeGiven): void {
  requireMoreThan("life", "horizon", given.horizon, 0, "s");
  if (given.phases.length === 0) throw new InputError("life", "phases", "one or more", 0);
  if (given.points.length === 0) throw new InputError("life", "points", "one or more", 0);
  given.phases.forEach((phase, at) => {
    requireMoreThan("life", `phases[${at}].duration`, phase.duration, 0, "s");
    const shares = phase.loads.reduce((sum, load) => sum + load.share, 0);
    if (!(Math.abs(shares - 1) < 1e-9))
      throw new InputError("life", `phases[${at}].loads`, "shares of 1 in all", shares);
  });
  for (const element of given.elements) requireAtLeast("life", `${element.name}'s soil`, element.soil, 0, "kg");
}
