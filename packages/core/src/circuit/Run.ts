import type { BankLaw, MediumTerm, OwnLaw, Pace, PartLaw, Terms } from "../parts/law/index.js";
import { rootOfQuadratic } from "./fittedFlow.js";
import { flowAtDrop } from "./flowAtDrop.js";
import { guessFlow, sumOfSlopes } from "./guessFlow.js";

/**
 * A series under one fuel state, folded: what drop a flow costs and what flow a drop drives.
 *
 * The static head, `constant`, is kept apart: `update` gives *friction* only (which here includes the opening pressure of
 * valves). Friction alone is what branches of a bank share, and small drops are not lost against a large head.
 */
export class Run implements OwnLaw {
  flow = 0;
  drop = 0;
  slope = 0;
  settled = true;
  kinked = false;
  /** static head, Pa */
  readonly constant: number;
  readonly shut: boolean;
  readonly oneWay: boolean;
  private readonly opening: number;
  /** what friction holds at no flow, see `rest`; worked out when it is first needed */
  private restDrop = Number.NaN;
  /** flows at which lines step in the early passage, m3/s, ascending */
  private readonly steps: readonly number[];
  private linear: number;
  private readonly plainLinear: number;
  private readonly media: readonly MediumTerm[];
  private readonly quadratic: number;
  private readonly own: readonly PartLaw[];
  private readonly banks: readonly BankLaw[];
  /** what the banks add to the linear term at no flow, for a first guess */
  private banksAtRest = Number.NaN;
  /** relative step that ends the search for a flow: another round costs little without banks, much with them */
  private readonly close: number;

  /** @param extra linear resistance besides what is folded, Pa s/m3, such as a pump's slip puts in the way */
  constructor(terms: Terms, extra = 0) {
    this.constant = terms.constant;
    this.shut = terms.shut;
    this.oneWay = terms.oneWay;
    this.opening = terms.opening;
    this.plainLinear = terms.linear + extra;
    this.media = terms.media;
    this.linear = this.linearWith(NONE);
    this.quadratic = terms.quadratic;
    this.own = terms.own;
    this.banks = terms.banks;
    this.steps = terms.own
      .map((law) => law.stepAt)
      .filter((step) => step < Infinity)
      .sort((a, b) => a - b);
    this.close = terms.banks.length > 0 ? 2e-6 : 1e-9;
  }

  update(pace: Pace): void {
    const { flow, own, banks } = this;
    this.settled = true;
    this.kinked = false;
    if (this.shut || (this.oneWay && flow < 0)) {
      this.slope = Infinity;
      this.drop = flow < 0 ? -Infinity : Infinity;
      return;
    }
    const bend = this.quadratic * Math.abs(flow);
    let drop = (this.linear + bend) * flow + this.opening;
    let slope = this.linear + 2 * bend;
    for (let at = 0; at < own.length; at++) {
      const law = own[at] as PartLaw;
      law.flow = flow;
      law.update(pace);
      drop += law.drop;
      slope += law.slope;
    }
    for (let at = 0; at < banks.length; at++) {
      const bank = banks[at] as BankLaw;
      bank.flow = flow;
      bank.update(pace);
      drop += bank.drop;
      slope += bank.slope;
      if (!bank.settled) this.settled = false;
      if (bank.kinked) this.kinked = true;
    }
    this.drop = drop;
    this.slope = slope;
  }

  /** Sets the resistance over clean of the named filters, here and in every bank; the others go back to their own. */
  restrict(restrictions: ReadonlyMap<string, number>): void {
    for (const bank of this.banks) bank.restrict(restrictions);
    this.refold(restrictions);
  }

  /** The same where its banks are another run's too, and have been set already. */
  refold(restrictions: ReadonlyMap<string, number>): void {
    this.linear = this.linearWith(restrictions);
    this.restDrop = Number.NaN;
  }

  /** What friction holds at no flow: its own opening pressure and that of banks of check valves, or of tanks, Pa. */
  get rest(): number {
    if (Number.isNaN(this.restDrop)) this.findRest();
    return this.restDrop;
  }

  /** Whether any flow is free: nothing here resists it. */
  get free(): boolean {
    return !this.shut && this.own.length + this.banks.length === 0 && this.linear === 0 && this.quadratic === 0;
  }

  /** Drop, Pa, head included, at a flow, m3/s. Infinite where nothing can flow that way. */
  at(flow: number): number {
    return this.constant + this.friction(flow);
  }

  /** Drop without the static head, Pa. */
  friction(flow: number): number {
    this.flow = flow;
    this.update("whole");
    return this.drop;
  }

  /** Flow, m3/s, that a drop, Pa, head included, drives; 0 where a valve stays shut. `close` as in `flowAtDrop`. */
  flowAt(drop: number, close = this.close): number {
    return this.flowOfFriction(drop - this.constant, 0, close);
  }

  /**
   * Flow, m3/s, that a drop without the static head drives. Leaves the slope there, or near: Infinity where a valve holds
   * it at rest, or the step of a line.
   *
   * @param near a flow close to the answer, where one is known
   */
  flowOfFriction(drop: number, near = 0, close = this.close): number {
    const { rest } = this;
    if (this.shut || (this.oneWay && drop <= rest)) {
      this.slope = Infinity;
      return 0;
    }
    const target = drop - rest;
    const direct = this.own.length === 0 && this.banks.length === 0;
    if (target === 0) {
      this.friction(0);
      return 0;
    }
    if (direct && this.linear === 0 && this.quadratic === 0) return target > 0 ? Infinity : -Infinity;
    const sign = target < 0 ? -1 : 1;
    if (direct) {
      const size = rootOfQuadratic(this.linear, this.quadratic, sign * target);
      this.slope = this.linear + 2 * this.quadratic * size;
      return sign * size;
    }
    const atRest = { linear: this.linear + this.banksAtRest, quadratic: this.quadratic, own: this.own };
    const guess = near * sign > 0 ? near * sign : guessFlow(atRest, sign * target, sign);
    return flowAtDrop(this, target, guess > 0 && guess < Infinity ? guess : 1e-6, rest, close, this.steps);
  }

  private findRest(): void {
    this.banksAtRest = sumOfSlopes(this.banks, 0);
    this.restDrop = this.banks.reduce((sum, bank) => sum + bank.drop, this.opening);
  }

  private linearWith(restrictions: ReadonlyMap<string, number>): number {
    return this.media.reduce(
      (sum, { name, clean, restriction }) => sum + clean * (restrictions.get(name) ?? restriction),
      this.plainLinear,
    );
  }
}

const NONE: ReadonlyMap<string, number> = new Map();
