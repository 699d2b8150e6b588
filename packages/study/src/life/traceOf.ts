import { type LifeGiven, type LifeMoment, SupplyModel } from "@thirstline/core";
import type { LifeAnswer } from "./LifeAnswer.js";
import { restrictionsOf } from "./restrictionsOf.js";

/** What gauges would read at the duty point where the first limit is met, as the elements fill. */
export function traceOf(given: LifeGiven, moments: readonly LifeMoment[], place: number): LifeAnswer["trace"] {
  const point = given.points[place] as LifeGiven["points"][number];
  const model = new SupplyModel(given.supply, { fuel: point.fuel, passage: "smooth", end: given.end ?? "middle" });
  const states = moments.map((moment) => {
    model.restrict(restrictionsOf(given, moment));
    return model.state(point.demand);
  });
  return {
    time: moments.map((moment) => moment.time),
    vacuum: states.map((state) => state.vacuum),
    feed: states.map((state) => state.feedPressure),
  };
}
