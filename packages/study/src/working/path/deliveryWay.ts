import { rowsOf } from "../../check/rows.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { demandHere } from "../supply/demand.js";
import { inWords } from "../worked.js";
import { kineticIn } from "./kineticIn.js";
import type { Stop } from "./Stop.js";
import { walkStretch } from "./walkStretch.js";

/** The delivery side of a scene, from the pump's outlet on. */
export interface DeliveryWay {
  readonly stops: readonly Stop[];
  readonly costs: readonly (() => Step | null)[];
  /** pressure of the fuel's motion at its end */
  readonly kinetic: Step;
}

/**
 * The delivery side at the demand; empty where none is stated.
 *
 * @param outlet pressure at the pump's outlet, for the pressures behind its parts
 */
export function deliveryWay(scene: Scene, outlet?: () => Step | null): DeliveryWay {
  const pressure = () =>
    outlet?.() ?? inWords("not known", { name: "pressure at the pump's outlet", value: 0, unit: "Pa" });
  return scene.kept(outlet ? "delivery way" : "delivery costs", () => {
    const flow = demandHere(scene);
    const { model, demand, suctionFlow } = scene;
    const { pumpRise } = model.state(demand);
    const entries = model.delivery.descent(demand, model.intake.pressure(suctionFlow) + (pumpRise ?? 0));
    const rows = rowsOf(model, { ...model.intake.descent(suctionFlow), delivery: entries }, 0, suctionFlow);
    const names = rows.delivery.map(({ name }) => name)[Symbol.iterator]();
    const start = { scene, pressure, flow, depth: 0, names, bore: null, spent: [] };
    const way = walkStretch(scene.system.delivery ?? [], entries, ["delivery"], start);
    return { stops: way.stops, costs: way.costs, kinetic: kineticIn({ scene, bore: way.bore, flow }) };
  });
}
