import type { BankLaw, Pace } from "../parts/law/index.js";
import type { Run } from "./Run.js";
import { Split } from "./Split.js";
import { splitByBracket } from "./splitByBracket.js";
import { newtonStep, splitByNewton } from "./splitByNewton.js";
import { splitByOpenSet } from "./splitByOpenSet.js";

/** Steps of Newton's method after which a split that has not settled is not going to: a line stands on a step. */
const MOST_ROUNDS = 12;

/**
 * A bank under one fuel state: how a flow splits over its branches, and the friction they share.
 *
 * Branches may start at different heads (separate tanks); `heads` then says what each needs at no flow, Pa, and the
 * shared drop is relative to the same zero, which is best the least of them: small drops are then not lost against large
 * heads. In an ordinary bank the common head is kept by the series around it.
 */
export class Bank implements BankLaw {
  flow = 0;
  drop = 0;
  slope = 0;
  settled = true;
  kinked = false;
  /** whether nothing can pass at all */
  readonly shut: boolean;
  /** whether nothing passes backwards, in any branch */
  readonly oneWay: boolean;
  private readonly size: number;
  private readonly openAt: readonly number[];
  private readonly split: Split;
  private readonly simple: boolean;
  /** single steps of the split taken since the last whole one */
  private rounds = 0;

  constructor(runs: readonly Run[], heads: readonly number[] = runs.map(() => 0)) {
    this.size = runs.length;
    this.openAt = runs.flatMap((run, at) => (run.shut ? [] : [at]));
    this.shut = this.openAt.length === 0;
    const openHeads = heads.filter((_, at) => this.openAt.includes(at));
    this.split = new Split(
      runs.filter((run) => !run.shut),
      openHeads,
    );
    this.oneWay = this.split.runs.every((run) => run.oneWay) && !this.shut;
    // One-way valves and heads of their own may leave a branch at rest, which Newton's method cannot see coming.
    this.simple = this.split.runs.every((run) => !run.oneWay) && openHeads.every((head) => head === 0);
  }

  update(pace: Pace): void {
    const { split, flow } = this;
    this.settled = true;
    if (this.shut) {
      this.slope = Infinity;
      this.drop = flow < 0 ? -Infinity : Infinity;
      return;
    }
    const before = split.total;
    split.total = flow;
    const goOn = pace === "next step" && before * flow > 0;
    this.rounds = goOn ? this.rounds + 1 : 0;
    if (pace !== "whole" && this.simple && flow !== 0 && this.rounds < MOST_ROUNDS) {
      for (let at = 0; at < split.flows.length; at++) {
        split.flows[at] = goOn ? ((split.flows[at] as number) / before) * flow : flow / split.flows.length;
      }
      newtonStep(split, goOn ? "next step" : "first step");
      this.settled = split.settled;
    } else if (!this.splitOpen(goOn)) splitByBracket(split);
    this.kinked = split.kinked;
    this.drop = split.drop;
    this.slope = split.slope;
  }

  /** The split by Newton's method; false where it does not settle. */
  private splitOpen(goOn: boolean): boolean {
    const { split, simple } = this;
    if (!simple) return splitByOpenSet(split, goOn);
    return this.rounds === 0 && splitByNewton(split);
  }

  restrict(restrictions: ReadonlyMap<string, number>): void {
    for (const run of this.split.runs) run.restrict(restrictions);
  }

  /** Shared drop, Pa, at a total flow, m3/s. */
  at(flow: number): number {
    this.flow = flow;
    this.update("whole");
    return this.drop;
  }

  /** Flow of each branch at a total flow, m3/s; a shut branch carries 0. */
  flows(flow: number): Float64Array {
    this.at(flow);
    const flows = new Float64Array(this.size);
    this.openAt.forEach((at, place) => {
      flows[at] = this.split.flows[place] ?? 0;
    });
    return flows;
  }
}
