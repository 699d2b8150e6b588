import type { BankLaw, PartLaw } from "./OwnLaw.js";

/** A filter's medium in the linear term. */
export interface MediumTerm {
  /** name of the filter; "" when it has none */
  readonly name: string;
  /** of the clean medium, Pa s/m3 */
  readonly clean: number;
  /** resistance over the clean one */
  readonly restriction: number;
}

/**
 * What a run of parts in series adds up to under one fuel state:
 * drop = constant + opening + linear * flow + quadratic * flow |flow| + the own laws.
 * However long the run, everything that can be folded is folded here.
 */
export class Terms {
  /** static head, Pa */
  constant = 0;
  /** what one-way valves need to stay open, Pa */
  opening = 0;
  /** Pa s/m3 */
  linear = 0;
  /** Pa s2/m6 */
  quadratic = 0;
  /** whether a valve shuts against backward flow */
  oneWay = false;
  /** whether nothing can pass at all */
  shut = false;
  /** what filters' media add to the linear term, kept apart since soil multiplies it */
  readonly media: MediumTerm[] = [];
  /** parts with a law of their own */
  readonly own: PartLaw[] = [];
  /** banks, whose split has to be searched for */
  readonly banks: BankLaw[] = [];

  /** Puts what another run adds up to behind this one. */
  add(other: Terms): void {
    this.constant += other.constant;
    this.opening += other.opening;
    this.linear += other.linear;
    this.quadratic += other.quadratic;
    this.oneWay ||= other.oneWay;
    this.shut ||= other.shut;
    this.media.push(...other.media);
    this.own.push(...other.own);
    this.banks.push(...other.banks);
  }
}
