import { closeBracket } from "../../closeBracket.js";
import { Fouling } from "./Fouling.js";
import { type Vector, wayFrom } from "./integrate.js";
import type { DirtyDelivery, DutyPhase, Life, LifeGiven, LifeMoment } from "./LifeKinds.js";
import { PhaseRates } from "./PhaseRates.js";
import { WorstMargins } from "./WorstMargins.js";

/** How closely the moment is found, s: a hundredth of a millionth of an hour. */
const CLOSE = 3.6e-5;

/** Where the elements have got to, and how they go on. */
export class Walk {
  time = 0;
  private burnt = 0;
  private state: Vector;
  private readonly given: LifeGiven;
  private readonly fouling: Fouling;
  private readonly margins: WorstMargins;
  private readonly rates: ReadonlyMap<DutyPhase, PhaseRates>;
  private dirty: DirtyDelivery | undefined;

  constructor(given: LifeGiven) {
    this.given = given;
    this.fouling = new Fouling(given.elements);
    this.state = this.fouling.start;
    this.dirty = given.dirty;
    this.margins = WorstMargins.of(given);
    this.rates = new Map(given.phases.map((phase) => [phase, new PhaseRates(given, phase, this.fouling)]));
  }

  /** Goes on through a phase, to the horizon at most; returns the end if it comes first. */
  through(phase: DutyPhase): Life["end"] {
    const rates = this.rates.get(phase) as PhaseRates;
    let left = Math.min(phase.duration, this.given.horizon - this.time);
    while (left > 0) {
      const toDirty = this.dirty ? this.dirty.at - this.time : Infinity;
      if (toDirty <= 0) {
        this.takeDirty(rates);
        if (this.margin < 0) return this.ended();
        continue;
      }
      const stretch = Math.min(left, toDirty);
      const end = this.stretch(rates, stretch);
      if (end) return end;
      left -= stretch;
    }
    return null;
  }

  /** How far from the first limit. */
  get margin(): number {
    return this.marginOf(this.state);
  }

  moment(): LifeMoment {
    const { state, fouling } = this;
    const { elements } = this.given;
    return {
      time: this.time,
      burnt: this.burnt,
      soil: elements.map((_, at) => state[at] as number),
      water: elements.map((_, at) => fouling.waterOn(state, at)),
      restriction: [...fouling.restrictions(state).values()],
    };
  }

  /** The end, here and now. */
  ended(): NonNullable<Life["end"]> {
    const { by, point } = this.margins.at(this.fouling.restrictions(this.state));
    return { ...this.moment(), by, point };
  }

  private marginOf(state: Vector): number {
    return this.margins.at(this.fouling.restrictions(state)).margin;
  }

  private stretch(rates: PhaseRates, duration: number): Life["end"] {
    const way = wayFrom((state, into) => rates.at(state, into), this.state, duration);
    const last = way(duration);
    const holds = last !== null && this.marginOf(last) >= 0;
    const reached = holds ? duration : this.firstBroken(way, duration);
    this.state = way(reached) ?? this.state;
    this.time += reached;
    this.burnt += rates.burn * reached;
    return holds ? null : this.ended();
  }

  /** The last moment of a stretch, s from its start, at which every limit holds. */
  private firstBroken(way: (time: number) => Vector | null, duration: number): number {
    const last = way(duration);
    const asked = last === null ? this.margins : this.margins.brokenBy(this.fouling.restrictions(last));
    const marginAt = (time: number) => {
      const state = way(time);
      return state ? asked.at(this.fouling.restrictions(state)).margin : -Infinity;
    };
    const low = { at: 0, value: asked.at(this.fouling.restrictions(this.state)).margin };
    const high = { at: duration, value: marginAt(duration) };
    return closeBracket(marginAt, low, high, Math.max(1e-12, CLOSE / duration)).low;
  }

  private takeDirty(rates: PhaseRates): void {
    const { volume, extra } = this.dirty as DirtyDelivery;
    this.dirty = undefined;
    const brought = extra.masses.map((mass) => mass * volume);
    this.state = rates.afterPulse(this.state, brought);
  }
}
