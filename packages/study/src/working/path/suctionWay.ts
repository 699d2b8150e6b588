import { type IntakeDescent, kineticPressure } from "@thirstline/core";
import { rowsOf } from "../../check/rows.js";
import * as formulas from "../formulas/path.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { airPressure } from "../supply/air.js";
import { worked } from "../worked.js";
import { kineticIn } from "./kineticIn.js";
import { once } from "./once.js";
import type { Stop, Stretch } from "./Stop.js";
import { severalTanks } from "./severalTanks.js";
import { type TankGiven, tankStop } from "./tankStop.js";
import { walkStretch } from "./walkStretch.js";

/** The suction side of a scene: every stop from the tanks on, and what it all costs. */
export interface SuctionWay {
  readonly stops: readonly Stop[];
  /** what stands on the main path, in order: its sum is the vacuum */
  readonly costs: readonly (() => Step | null)[];
  /** pressure of the fuel's motion at the end */
  readonly kinetic: Step;
  readonly vacuum: () => Step | null;
}

/** The suction side, worked out at the flow it carries. */
export function suctionWay(scene: Scene, flow: Step): SuctionWay {
  return scene.kept("suction way", () => followed(scene, flow));
}

function followed(scene: Scene, flow: Step): SuctionWay {
  const { model, suctionFlow } = scene;
  const descent = model.intake.descent(suctionFlow);
  const names = rowNames(scene, descent);
  const open = scene.system.tanks.flatMap((tank, at) => (tank.vent.kind === "blocked" ? [] : [at]));
  const given = { scene, flow, names, descent, open };
  const before = descent.tanks.length > 1 ? severalTanks(given) : oneTank(given);
  const start = { scene, pressure: () => airPressure(scene), flow, depth: 0, names };
  const main = walkStretch(scene.system.suction, descent.suction, ["suction"], {
    ...start,
    spent: before.costs,
    bore: before.bore,
  });
  const kinetic = { ...kineticIn({ scene, bore: main.bore, flow }), name: "velocity head" };
  const costs = [...before.costs, ...main.costs, ...(main.bore === null ? [] : [() => kinetic])];
  const value = model.supply.ambientPressure - model.intake.pressure(suctionFlow);
  const vacuum = once(() => {
    const d = costs.map((cost) => cost());
    if (!Number.isFinite(value) || !d.every((step) => step !== null) || d.length === 0) return null;
    return worked(formulas.vacuumSum, { d }, { value, scale: model.supply.ambientPressure });
  });
  const motion: Stop = {
    name: names.next().value ?? "the fuel's motion",
    kind: "velocity",
    depth: 0,
    path: null,
    flow,
    drop: () => kinetic,
    pressure: () => {
      const V = vacuum();
      return (
        V &&
        worked(formulas.pressureOfVacuum, { p_a: airPressure(scene), V }, { name: "pressure at the end of the path" })
      );
    },
    reynolds: null,
    regime: null,
  };
  return { stops: [...before.stops, ...main.stops, ...(kinetic.value > 0 ? [motion] : [])], costs, kinetic, vacuum };
}

/** Names of the rows of the suction side, in order, as the answers have them. */
function* rowNames({ model, fuel, suctionFlow }: Scene, descent: IntakeDescent): Generator<string, undefined> {
  const kinetic = kineticPressure(suctionFlow, descent.bore, fuel);
  for (const { name } of rowsOf(model, { ...descent, delivery: [] }, kinetic, suctionFlow).suction) yield name;
  return undefined;
}

function oneTank({ scene, flow, names, descent, open: [at = 0] }: TankGiven): Stretch {
  const [share] = descent.tanks;
  if (!share) return { stops: [], costs: [], bore: null };
  const head = tankStop(scene, at, { flow, depth: 0, name: names.next().value ?? "tank" });
  const start = { scene, pressure: () => airPressure(scene), flow, depth: 0, names, bore: null, spent: [head.drop] };
  const path = walkStretch(scene.system.tanks[at]?.path ?? [], share.descent, ["tanks", at, "path"], start);
  return { stops: [head, ...path.stops], costs: [head.drop, ...path.costs], bore: path.bore };
}
