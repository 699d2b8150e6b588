import type { SystemPart } from "@thirstline/spec/system";
import * as formulas from "../formulas/soil.js";
import type { Stop } from "../path/Stop.js";
import type { PartPath, Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { demandHere } from "../supply/demand.js";
import { suctionFlow } from "../supply/pump.js";
import { inWords, worked } from "../worked.js";
import { stopsOf } from "./dropSteps.js";

/** What a filter takes out of the fuel of one kind of particle, or of water, at the flow through it; null for nothing. */
export type Takes = (filter: string, flow: Step) => Step | null;

/** What is left of one kind of particle, or of water, on its way; and what reaches each filter. */
export interface Passing {
  /** at the pump */
  readonly suction: Step;
  /** at the end of the path */
  readonly path: Step;
  readonly reaches: ReadonlyMap<string, Step>;
}

const ALL = inWords("all of it, as it leaves the tank", {
  name: "share in the fuel",
  value: 1,
  unit: "1",
  kind: "ratio",
});

/** Follows one kind of particle from the tank to the end of the path. */
export function passingOf(scene: Scene, takes: Takes): Passing {
  const stops = scene.kept(
    "stops by place",
    () => new Map(stopsOf(scene).map((stop) => [JSON.stringify(stop.path), stop])),
  );
  const reaches = new Map<string, Step>();
  const walk = { stops, takes, reaches };
  const { system } = scene;
  const open = system.tanks.flatMap((tank, at) => (tank.vent.kind === "blocked" ? [] : [{ tank, at }]));
  const behind = open.map(({ tank, at }) => along(tank.path, ["tanks", at, "path"], ALL, walk));
  const joined =
    open.length < 2
      ? (behind[0] ?? ALL)
      : worked(formulas.passedSideBySide, {
          q: open.map(({ at }) => ratio(flowAt(stops, ["tanks", at]), suctionFlow(scene))),
          p: behind,
        });
  const suction = along(system.suction, ["suction"], joined, walk);
  return { suction, path: along(system.delivery ?? [], ["delivery"], suction, walk), reaches };
}

interface Walk {
  readonly stops: ReadonlyMap<string, Stop>;
  readonly takes: Takes;
  readonly reaches: Map<string, Step>;
}

function along(parts: readonly SystemPart[], place: PartPath, start: Step, walk: Walk): Step {
  return parts.reduce((p, part, at) => {
    const path = [...place, at];
    if (part.part === "bank") return sideBySide(part, path, p, walk);
    if (part.part !== "filter") return p;
    const flow = flowAt(walk.stops, path);
    const E = part.blocked ? null : walk.takes(part.name, flow);
    walk.reaches.set(part.name, p);
    return E ? worked(formulas.passedInSeries, { p, E }, { part: path }) : p;
  }, start);
}

function sideBySide(bank: Extract<SystemPart, { part: "bank" }>, path: PartPath, start: Step, walk: Walk): Step {
  const whole = flowAt(walk.stops, path);
  const q = bank.branches.map((_, at) => ratio(flowAt(walk.stops, [...path, "branches", at, 0]), whole));
  const p = bank.branches.map((branch, at) => along(branch, [...path, "branches", at], start, walk));
  return worked(formulas.passedSideBySide, { q, p }, { part: path });
}

function ratio(q: Step, Q: Step): Step {
  return worked(formulas.flowRatio, { q, Q });
}

function flowAt(stops: ReadonlyMap<string, Stop>, path: PartPath): Step {
  const found = stops.get(JSON.stringify(path))?.flow;
  return found ?? inWords("nothing flows", { name: "flow", value: 0, unit: "m3/s", kind: "flow" });
}

/** What decides how the tank thins: burn over demand, and what relief sends back over demand. */
export function tankFlows(scene: Scene, burn: Step): { readonly x: Step; readonly z: Step } {
  const Q = demandHere(scene);
  return {
    x: worked(formulas.flowRatio, { q: burn, Q }, { name: "burn over demand" }),
    z: worked(formulas.reliefRatio, { q: suctionFlow(scene), Q }),
  };
}
