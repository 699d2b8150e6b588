import type { IntakeDescent } from "@thirstline/core";
import * as formulas from "../formulas/path.js";
import { fuelDensity } from "../fuel/density.js";
import type { Step } from "../Step.js";
import { filePlace } from "../scene/filePlace.js";
import type { Scene } from "../scene/Scene.js";
import { airPressure, freeFall } from "../supply/air.js";
import { fromFile, inWords, worked } from "../worked.js";
import { once } from "./once.js";
import type { Stop } from "./Stop.js";

/** What tanks are followed from. */
export interface TankGiven {
  readonly scene: Scene;
  readonly flow: Step;
  readonly names: Iterator<string, undefined>;
  readonly descent: IntakeDescent;
  /** places of the tanks whose vents let air in */
  readonly open: readonly number[];
}

/** A tank at its low level: what its vent holds back and what its fuel helps. */
export function tankStop(
  scene: Scene,
  at: number,
  { flow, depth, name }: { readonly flow: Step; readonly depth: number; readonly name: string },
): Stop {
  const tank = scene.system.tanks[at] as Scene["system"]["tanks"][number];
  const place = filePlace(scene.system, ["tanks", at]);
  const part = ["tanks", at];
  const held = { name: "vacuum its vent holds", unit: "Pa", kind: "vacuum", part } as const;
  const drop = once(() =>
    worked(
      formulas.tankCost,
      {
        p_h:
          tank.vent.kind === "spring"
            ? fromFile(`${place}.vent`, { ...held, value: tank.vent.opening })
            : inWords("an open vent holds none", { ...held, value: 0 }),
        rho: fuelDensity(scene),
        g: freeFall,
        h: fromFile(`${place}.low depth`, {
          name: "fuel over the pick-up when low",
          value: tank.lowDepth,
          unit: "m",
          kind: "length",
          part,
        }),
      },
      { part, name: `drop of ${name}` },
    ),
  );
  return {
    name,
    kind: "tank",
    depth,
    path: part,
    flow,
    drop,
    pressure: () =>
      worked(formulas.pressureOfVacuum, { p_a: airPressure(scene), V: drop() }, { name: `pressure behind ${name}` }),
    reynolds: null,
    regime: null,
  };
}
