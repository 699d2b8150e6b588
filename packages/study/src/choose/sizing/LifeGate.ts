import { resistanceRatio } from "@thirstline/core";
import type { CatalogueElement } from "@thirstline/spec/system";
import { type Fits, fits } from "./freeDrop.js";
import { type LifePoint, lifePoints } from "./lifePoints.js";
import { type Caught, type OrderFacts, resistances } from "./OrderFacts.js";
import type { StagePart } from "./StagePart.js";
import { type Stack, stageName } from "./stack.js";

/** One stage with all that is reckoned with. */
export interface Stage {
  readonly element: CatalogueElement;
  readonly count: number;
  readonly part: StagePart;
}

/**
 * Whether an arrangement lasts an interval, by sums: at its end each element has caught what its order says, so its drop is
 * known, and margins only shrink on the way there. Exact, save within a hundredth of a Pa of a limit. Only where
 * `isAdditive` says that sums are enough.
 *
 * Where the pump moves the less the more it has to draw against, a limit holds just when the stack's drop fits into the room
 * for it at the flow the pump has with that room taken: more drop than that lowers the flow, and less raises it.
 */
export class LifeGate {
  private readonly points: readonly LifePoint[];
  private readonly others: ReadonlyMap<string, number>;

  constructor(stack: Stack, bore: number | null) {
    this.others = resistances(stack.system);
    this.points = lifePoints(stack, bore);
  }

  /** @param stages elements and counts, from the tank on */
  judge(
    stages: readonly Stage[],
    caught: { readonly least: Caught; readonly most: Caught },
    elements: OrderFacts["elements"],
  ): Fits {
    const atMost = this.judgeEnd(stages, caught.most, elements, "most");
    if (caught.least === caught.most || atMost === "yes") return atMost;
    return this.judgeEnd(stages, caught.least, elements, "least") === "no" ? "no" : "too close";
  }

  private judgeEnd(
    stages: readonly Stage[],
    { stages: soils, others }: Caught,
    elements: OrderFacts["elements"],
    end: "least" | "most",
  ): Fits {
    const followed = stages.map((_, at) => elements.get(stageName(at + 1, 1)));
    const ratios = followed.map((one, at) =>
      one?.law ? resistanceRatio(one.law, (soils[at] as number) / (stages[at] as Stage).count) : 1,
    );
    let worst: Fits = "yes";
    for (const point of this.points) {
      const dynamicViscosity = point.fuel.density * point.fuel.kinematicViscosity;
      const dropOf = ({ count, part }: Stage, at: number, flow: number) =>
        part.drop(point.fuel, flow / count) +
        ((ratios[at] as number) - 1) * part.resistance * dynamicViscosity * (flow / count);
      for (const [at, stage] of stages.entries()) {
        const { terminalDrop } = stage.element.filter;
        if (terminalDrop !== undefined) worst = worseOf(worst, fits(dropOf(stage, at, point[end]), terminalDrop));
      }
      let grown = 0;
      for (const [name, resistance] of this.others) {
        const one = elements.get(name);
        const before = one?.law ? resistanceRatio(one.law, one.soil) : 1;
        const ratio = one?.law ? resistanceRatio(one.law, others.get(name) ?? 0) : 1;
        grown += (ratio - before) * resistance * dynamicViscosity * point.demand;
      }
      for (const { free, flow, ofSuction, ofDelivery } of point.rooms) {
        const own = ofSuction ? stages.reduce((sum, stage, at) => sum + dropOf(stage, at, flow), 0) : 0;
        worst = worseOf(worst, fits(own + (ofDelivery ? grown : 0), free));
      }
      if (worst === "no") return worst;
    }
    return worst;
  }
}

function worseOf(one: Fits, other: Fits): Fits {
  return one === "no" || other === "no" ? "no" : one === "too close" ? one : other;
}
