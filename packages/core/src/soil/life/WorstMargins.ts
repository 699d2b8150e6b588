import { type DescentEntry, type LimitName, type Margin, marginsOf, SupplyModel } from "../../supply/index.js";
import type { LifeEnd, LifeGiven } from "./LifeKinds.js";

/** The least of all margins at the worst point, as a share of its limit's own scale, and what it belongs to. */
export interface WorstMargin {
  /** 0 or more while everything holds; -Infinity when nothing can pass */
  readonly margin: number;
  readonly by: LifeEnd;
}

interface JudgedPoint {
  readonly model: SupplyModel;
  readonly demand: number;
  readonly margins: readonly (readonly [LimitName, Margin])[];
}

/**
 * How far a supply is from its first limit, at the worst of the duty points, with elements at any restriction.
 * Turbulent from Re 2300 up is the worse reading at every flow, so it alone is asked.
 */
export class WorstMargins {
  private readonly points: readonly JudgedPoint[];
  private readonly terminals: ReadonlyMap<string, number>;
  private readonly scale: number;

  constructor(given: LifeGiven) {
    this.terminals = given.terminals ?? new Map();
    this.scale = given.supply.ambientPressure;
    this.points = given.points.map(({ fuel, demand }) => {
      const model = new SupplyModel(given.supply, { fuel, passage: "early", end: given.end ?? "middle" });
      const margins = [...marginsOf(model, given.limits)].filter(([limit]) => limit !== "vacuum clean");
      return { model, demand, margins };
    });
  }

  /** @param restrictions resistance over clean, by filter name */
  at(restrictions: ReadonlyMap<string, number>): WorstMargin {
    let worst: WorstMargin = { margin: Infinity, by: { kind: "limit", limit: "vacuum at change" } };
    const consider = (margin: number, by: LifeEnd) => {
      // Turned round: a margin that is no number counts as broken.
      if (!(margin >= worst.margin)) worst = { margin: Number.isNaN(margin) ? -Infinity : margin, by };
    };
    for (const { model, demand, margins } of this.points) {
      model.restrict(restrictions);
      for (const [limit, margin] of margins) {
        // Pa for pressures, the demand for the pump's flow: margins of different kinds can then be compared.
        const scale = limit === "pump capacity" ? demand : this.scale;
        consider(margin(demand) / scale, { kind: "limit", limit });
      }
      if (this.terminals.size > 0) this.considerTerminals(model, demand, consider);
    }
    return worst;
  }

  private considerTerminals(model: SupplyModel, demand: number, consider: (margin: number, by: LifeEnd) => void): void {
    const { tanks, suction, delivery } = model.descent(demand);
    for (const entries of [...tanks.map((tank) => tank.descent), suction, delivery]) {
      forEachFilter(entries, (name, drop) => {
        const terminal = this.terminals.get(name);
        if (terminal !== undefined) consider(1 - drop / terminal, { kind: "terminal drop", element: name });
      });
    }
  }
}

/** Every filter of a descent with its drop, Pa. */
export function forEachFilter(entries: readonly DescentEntry[], visit: (name: string, drop: number) => void): void {
  for (const entry of entries) {
    if (entry.kind === "bank") for (const branch of entry.branches) forEachFilter(branch, visit);
    else if (entry.profile.part.kind === "filter") {
      visit(entry.profile.part.name ?? "", entry.profile.drop ?? Infinity);
    }
  }
}
