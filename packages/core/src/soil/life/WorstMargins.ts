import { filtersAt, marginsOf, SupplyModel } from "../../supply/index.js";
import type { LifeEnd, LifeGiven } from "./LifeKinds.js";

/** The least of all margins at the worst point, as a share of its limit's own scale, and what it belongs to. */
export interface WorstMargin {
  /** 0 or more while everything holds; -Infinity when nothing can pass */
  readonly margin: number;
  readonly by: LifeEnd;
  /** place of that point in the life's points */
  readonly point: number;
}

/** One margin at one duty point, as a share of its scale. */
interface Judged {
  readonly by: LifeEnd;
  readonly margin: () => number;
}

interface JudgedPoint {
  readonly place: number;
  readonly model: SupplyModel;
  readonly judged: readonly Judged[];
}

/**
 * How far a supply is from its first limit, at the worst of the duty points, with elements at any restriction.
 * Turbulent from Re 2300 up is the worse reading at every flow, so it alone is asked.
 */
export class WorstMargins {
  private readonly points: readonly JudgedPoint[];

  private constructor(points: readonly JudgedPoint[]) {
    this.points = points;
  }

  /** Of a life's points, limits and terminal drops. */
  static of(given: LifeGiven): WorstMargins {
    const terminals = given.terminals ?? new Map<string, number>();
    const points = given.points.map(({ fuel, demand }, place): JudgedPoint => {
      const model = new SupplyModel(given.supply, { fuel, passage: "early", end: given.end ?? "middle" });
      const limits = [...marginsOf(model, given.limits)].filter(([limit]) => limit !== "vacuum clean");
      const judged = limits.map(([limit, margin]): Judged => {
        // Pa for pressures, the demand for the pump's flow: margins of different kinds can then be compared.
        const scale = limit === "pump capacity" ? demand : given.supply.ambientPressure;
        return { by: { kind: "limit", limit }, margin: () => margin(demand) / scale };
      });
      return { place, model, judged: [...judged, ...terminalsOf(terminals, model, demand)] };
    });
    return new WorstMargins(points);
  }

  /** @param restrictions resistance over clean, by filter name */
  at(restrictions: ReadonlyMap<string, number>): WorstMargin {
    let margin = Infinity;
    let by: LifeEnd = { kind: "limit", limit: "vacuum at change" };
    let point = 0;
    for (const { place, model, judged } of this.points) {
      model.restrict(restrictions);
      for (const one of judged) {
        const own = one.margin();
        // Turned round: a margin that is no number counts as broken.
        if (own >= margin) continue;
        margin = Number.isNaN(own) ? -Infinity : own;
        by = one.by;
        point = place;
      }
    }
    return { margin, by, point };
  }

  /** Whether every margin is 0 or more; asks no further than the first that is not. */
  hold(restrictions: ReadonlyMap<string, number>): boolean {
    for (const { model, judged } of this.points) {
      model.restrict(restrictions);
      // Turned round: a margin that is no number counts as broken.
      for (const one of judged) if (!(one.margin() >= 0)) return false;
    }
    return true;
  }

  /**
   * The margins that some restrictions break, and no others: of restrictions lower than these, only those can be broken,
   * since no margin rises as elements fill. So a search for the moment need not ask all.
   */
  brokenBy(restrictions: ReadonlyMap<string, number>): WorstMargins {
    const points = this.points.flatMap(({ place, model, judged }): JudgedPoint[] => {
      model.restrict(restrictions);
      const broken = judged.filter((one) => !(one.margin() >= 0));
      return broken.length === 0 ? [] : [{ place, model, judged: broken }];
    });
    return new WorstMargins(points);
  }
}

/** How far each element with a terminal drop of its own is from it. */
function terminalsOf(terminals: ReadonlyMap<string, number>, model: SupplyModel, demand: number): Judged[] {
  return [...terminals].map(([element, terminal]) => ({
    by: { kind: "terminal drop", element },
    margin: () => {
      let least = Infinity;
      for (const { part, drop } of filtersAt(model, demand)) {
        if (part.name === element) least = Math.min(least, 1 - (drop ?? Infinity) / terminal);
      }
      return least;
    },
  }));
}
