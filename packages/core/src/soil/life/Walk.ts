import type { Vector } from "./dormandPrince.js";
import { Fouling } from "./Fouling.js";
import { type Bounds, follow } from "./follow.js";
import type { DirtyDelivery, DutyPhase, Life, LifeGiven, LifeMoment } from "./LifeKinds.js";
import { PhaseRates } from "./PhaseRates.js";
import { WorstMargins } from "./WorstMargins.js";

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
  private readonly bounds: Bounds;
  /** size of the last step taken in each phase, s */
  private readonly steps = new Map<PhaseRates, number | null>();

  constructor(given: LifeGiven) {
    this.given = given;
    this.fouling = new Fouling(given.elements);
    this.state = this.fouling.start;
    this.dirty = given.dirty;
    this.margins = WorstMargins.of(given);
    this.rates = new Map(given.phases.map((phase) => [phase, new PhaseRates(given, phase, this.fouling)]));
    const { fouling, margins } = this;
    this.bounds = {
      holds: (state) => margins.hold(fouling.restrictions(state)),
      brokenAt: (state) => {
        const broken = margins.brokenBy(fouling.restrictions(state));
        return (other) => broken.at(fouling.restrictions(other)).margin;
      },
    };
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
    const ratesAt = (state: Vector, into: Vector) => rates.at(state, into);
    const found = follow(ratesAt, this.state, duration, this.bounds, this.steps.get(rates) ?? null);
    this.steps.set(rates, found.step);
    this.state = found.state;
    this.time += found.time;
    this.burnt += rates.burn * found.time;
    return found.broken ? this.ended() : null;
  }

  private takeDirty(rates: PhaseRates): void {
    const { volume, extra } = this.dirty as DirtyDelivery;
    this.dirty = undefined;
    const brought = extra.masses.map((mass) => mass * volume);
    this.state = rates.afterPulse(this.state, brought);
  }
}
