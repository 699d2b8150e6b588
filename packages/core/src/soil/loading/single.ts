/**
 * A blocking law of one constant, in one measure of load m (soil per area, soil, or filtered volume per area); the
 * constant is per that measure. All hold for a constant of 0, which blocks nothing.
 */
export interface SingleLaw {
  /** resistance over clean resistance; Infinity from `plugsAt` on */
  ratio(constant: number, load: number): number;
  /** derivative of the ratio by load */
  slope(constant: number, load: number): number;
  /** integral of the ratio over load: time at constant pressure times initial rate */
  effort(constant: number, load: number): number;
  /** the load at an effort; inverse of `effort` */
  filtrate(constant: number, effort: number): number;
  /** the load at a ratio; inverse of `ratio` */
  load(constant: number, ratio: number): number;
  /** the constant with which a load gives a ratio */
  constant(load: number, ratio: number): number;
  plugsAt(constant: number): number;
}

/** (e^y - 1)/y, 1 at 0: keeps every figure where y is small. */
const rising = (y: number): number => (y === 0 ? 1 : Math.expm1(y) / y);
/** ln(1 + y)/y, 1 at 0. */
const falling = (y: number): number => (y === 0 ? 1 : Math.log1p(y) / y);
/** A constant of 0 times any load is 0, also times an infinite one. */
const product = (constant: number, load: number): number => (constant === 0 ? 0 : constant * load);
/** A load at which `amount` of `constant` is used up; without a constant, never, unless nothing is asked for. */
const quotient = (amount: number, constant: number): number => (amount === 0 ? 0 : amount / constant);
/** ln(ratio), to full figures close to ratio 1. */
const logOf = (ratio: number): number => Math.log1p(ratio - 1);
/** 1 - 1/sqrt(ratio), likewise. */
const narrowed = (ratio: number): number => -Math.expm1(-logOf(ratio) / 2);
/** 1/left^power, and Infinity where nothing is left. */
const over = (left: number, power: number): number => (left > 0 ? left ** -power : Infinity);

/** A layer builds up on the surface; resistance grows by the same amount with each layer. */
export const cake: SingleLaw = {
  ratio: (constant, load) => 1 + product(constant, load),
  slope: (constant) => constant,
  effort: (constant, load) => load + product(constant, load) * (load / 2),
  filtrate: (constant, effort) => (2 * effort) / (1 + Math.sqrt(1 + 2 * product(constant, effort))),
  load: (constant, ratio) => quotient(ratio - 1, constant),
  constant: (load, ratio) => (ratio - 1) / load,
  plugsAt: () => Infinity,
};

/** A particle may land on others: each closes its share of the pores still open. */
export const intermediate: SingleLaw = {
  ratio: (constant, load) => Math.exp(product(constant, load)),
  slope: (constant, load) => (constant === 0 ? 0 : constant * Math.exp(constant * load)),
  effort: (constant, load) => load * rising(product(constant, load)),
  filtrate: (constant, effort) => (constant === 0 ? effort : effort * falling(constant * effort)),
  load: (constant, ratio) => quotient(logOf(ratio), constant),
  constant: (load, ratio) => logOf(ratio) / load,
  plugsAt: () => Infinity,
};

/** Pores narrow as soil settles on their walls. */
export const standard: SingleLaw = {
  ratio: (constant, load) => over(1 - product(constant, load) / 2, 2),
  slope: (constant, load) => (constant === 0 ? 0 : constant * over(1 - (constant * load) / 2, 3)),
  effort: (constant, load) => load * over(1 - product(constant, load) / 2, 1),
  filtrate: (constant, effort) => (effort === Infinity ? 2 / constant : effort / (1 + product(constant, effort) / 2)),
  load: (constant, ratio) => quotient(2 * narrowed(ratio), constant),
  constant: (load, ratio) => (2 * narrowed(ratio)) / load,
  plugsAt: (constant) => 2 / constant,
};

/** Each particle closes a pore. */
export const complete: SingleLaw = {
  ratio: (constant, load) => over(1 - product(constant, load), 1),
  slope: (constant, load) => (constant === 0 ? 0 : constant * over(1 - constant * load, 2)),
  effort: (constant, load) => {
    const closed = product(constant, load);
    return closed < 1 ? load * falling(-closed) : Infinity;
  },
  filtrate: (constant, effort) => (effort === Infinity ? 1 / constant : effort * rising(-product(constant, effort))),
  load: (constant, ratio) => quotient((ratio - 1) / ratio, constant),
  constant: (load, ratio) => (ratio - 1) / ratio / load,
  plugsAt: (constant) => 1 / constant,
};
