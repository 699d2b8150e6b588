import type { OwnLaw, Terms } from "../parts/law/index.js";
import { rootOfRising } from "./rootOfRising.js";

/**
 * A series under one fuel state, folded: what drop a flow costs and what flow a drop drives.
 *
 * The static head is kept apart from *friction* (which here includes the opening pressure of valves): friction alone is
 * what branches of a bank share, and small drops are not lost against a large head.
 */
export class Run implements OwnLaw {
  slope = 0;
  readonly constant: number;
  readonly shut: boolean;
  readonly oneWay: boolean;
  private readonly opening: number;
  private readonly linear: number;
  private readonly quadratic: number;
  private readonly own: readonly OwnLaw[];

  constructor(terms: Terms) {
    this.constant = terms.constant;
    this.shut = terms.shut;
    this.oneWay = terms.oneWay;
    this.opening = terms.opening;
    this.linear = terms.linear;
    this.quadratic = terms.quadratic;
    this.own = terms.own;
  }

  /** Drop, Pa, head included, at a flow, m3/s. Infinite where nothing can flow that way. */
  at(flow: number, warm = false): number {
    return this.constant + this.friction(flow, warm);
  }

  /** Drop without the static head, Pa; leaves its derivative in `slope`. */
  friction(flow: number, warm = false): number {
    if (this.shut || (this.oneWay && flow < 0)) {
      this.slope = Infinity;
      return flow < 0 ? -Infinity : Infinity;
    }
    const size = Math.abs(flow);
    let drop = (this.linear + this.quadratic * size) * flow;
    let slope = this.linear + 2 * this.quadratic * size;
    for (const law of this.own) {
      drop += law.at(flow, warm);
      slope += law.slope;
    }
    this.slope = slope;
    return drop + this.opening;
  }

  /** Flow, m3/s, that a drop, Pa, head included, drives; 0 where a valve stays shut. */
  flow(drop: number): number {
    return this.flowOfFriction(drop - this.constant);
  }

  /** Flow, m3/s, that a drop without the static head drives. */
  flowOfFriction(drop: number): number {
    if (this.shut || (this.oneWay && drop <= this.opening)) return 0;
    const target = drop - this.opening;
    if (target === 0) return 0;
    const direct = this.own.length === 0;
    if (direct && this.linear === 0 && this.quadratic === 0) return target > 0 ? Infinity : -Infinity;
    const guess = this.foldedFlow(Math.abs(target));
    if (direct) return Math.sign(target) * guess;
    const size = target > 0 ? this.root(target, guess, 1) : this.root(-target, guess, -1);
    return Math.sign(target) * size;
  }

  /** Flow that the folded terms alone, with the own laws' slope at rest, would let pass. */
  private foldedFlow(target: number): number {
    let linear = this.linear;
    for (const law of this.own) {
      law.at(0);
      linear += law.slope;
    }
    return (2 * target) / (linear + Math.sqrt(linear * linear + 4 * this.quadratic * target));
  }

  private root(target: number, guess: number, sign: 1 | -1): number {
    const run = this;
    let warm = false;
    const rising = {
      slope: 0,
      at(size: number) {
        const drop = sign * (run.friction(sign * size, warm) - run.opening);
        this.slope = run.slope;
        warm = true;
        return drop;
      },
    };
    return rootOfRising(rising, target, guess > 0 && guess < Infinity ? guess : 1e-6);
  }
}
