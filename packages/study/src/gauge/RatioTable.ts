/** Demand over the noted one, at which a table is worked out; what lies between is a parabola, which pressures nearly are. */
const DEMANDS = [0.7, 1, 1.4] as const;
/** Resistance over clean at which a table is worked out; straight between, as a part's pressure is in its resistance. */
const RATIOS = [1, 1.5, 2.2, 3.3, 5, 7.5, 11, 16, 25, 50, 120, 1000, 1e4] as const;

/** How much the figures at each of the demands count at one between. */
export type DemandWeights = readonly [number, number, number];

/** Weights of the parabola through the table's demands, at a demand over the noted one. */
export function demandWeights(demand: number): DemandWeights {
  const [a, b, c] = DEMANDS;
  return [
    ((demand - b) * (demand - c)) / ((a - b) * (a - c)),
    ((demand - a) * (demand - c)) / ((b - a) * (b - c)),
    ((demand - a) * (demand - b)) / ((c - a) * (c - b)),
  ];
}

/** Figures of a table at one of its resistances, one at each of its demands. */
export interface TableEnd {
  readonly ratio: number;
  readonly figures: readonly number[];
}

/** A figure known by the model at a few demands and resistances, so that a fit can ask for it a hundred thousand times. */
export class RatioTable {
  /** at each resistance the figures at all demands, one after another */
  private readonly figures: Float64Array;

  /** @param of the figure at a demand over the noted one, and a resistance over clean of the leading element */
  constructor(of: (demand: number, ratio: number) => number) {
    this.figures = Float64Array.from(RATIOS.flatMap((ratio) => DEMANDS.map((demand) => of(demand, ratio))));
  }

  /** The figure at a demand over the noted one and a resistance over clean, 1 or more; below 1 the line goes on. */
  at(demand: number, ratio: number): number {
    return this.weighted(demandWeights(demand), ratio);
  }

  /** The same with the demand's weights worked out beforehand, since all readings of a run share them. */
  weighted([low, middle, high]: DemandWeights, ratio: number): number {
    const { figures } = this;
    const place = placeOf(ratio);
    const from = RATIOS[place] as number;
    const part = (ratio - from) / ((RATIOS[place + 1] as number) - from);
    const at = 3 * place;
    const left =
      low * (figures[at] as number) + middle * (figures[at + 1] as number) + high * (figures[at + 2] as number);
    const right =
      low * (figures[at + 3] as number) + middle * (figures[at + 4] as number) + high * (figures[at + 5] as number);
    return left + part * (right - left);
  }

  /** The resistances a figure lies between, with the figures at all demands there. */
  around(ratio: number): readonly [TableEnd, TableEnd] {
    const place = placeOf(ratio);
    const end = (at: number): TableEnd => ({
      ratio: RATIOS[at] as number,
      figures: [...this.figures.subarray(3 * at, 3 * at + 3)],
    });
    return [end(place), end(place + 1)];
  }

  /** How fast the figure grows with resistance. */
  slope(demand: number, ratio: number): number {
    const step = 0.1 * Math.max(1, ratio - 1);
    return (this.at(demand, ratio + step) - this.at(demand, ratio)) / step;
  }
}

/** Where in the table the stretch begins that a resistance lies in. */
function placeOf(ratio: number): number {
  let place = 0;
  while (place < RATIOS.length - 2 && ratio > (RATIOS[place + 1] as number)) place++;
  return place;
}

/** The demands of `RatioTable`, over the noted one. */
export const tableDemands: readonly number[] = DEMANDS;

/** The resistances of `RatioTable`, for what is worked out at each of them besides. */
export const tableRatios: readonly number[] = RATIOS;
