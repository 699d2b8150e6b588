import type { LimitName } from "@thirstline/core";
import * as formulas from "../formulas/pumps.js";
import { vapourPressure } from "../fuel/vapour.js";
import type { Check, Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { fromFile, worked } from "../worked.js";
import { demandHere } from "./demand.js";
import { feedLimit, vacuumLimit } from "./limits.js";
import { lowest } from "./lowest.js";
import { feedWithReliefOpen, neededRise, vacuum } from "./pressures.js";
import { openRise, slip, sweptFlow } from "./pump.js";

/** What a limit compares at a flow: what comes out, and what it must keep to. */
export interface LimitSides {
  readonly left: Step;
  readonly right: Step;
  /** how they stand while the limit holds */
  readonly holds: Exclude<Check["relation"], "=">;
  readonly words: string;
}

/** Both sides of a limit at the demand, or the flow, a scene is worked out at; null where one is not known. */
export function limitSides(scene: Scene, limit: LimitName): LimitSides | null {
  switch (limit) {
    case "vacuum clean":
    case "vacuum at change": {
      const [left, right] = [vacuum(scene), vacuumLimit(scene, limit === "vacuum clean" ? "clean" : "at change")];
      return left && right && { left, right, holds: "<=", words: "the vacuum is its limit" };
    }
    case "vapour": {
      const left = lowest(scene);
      return (
        left && { left, right: vapourPressure(scene), holds: ">=", words: "the lowest pressure is the vapour pressure" }
      );
    }
    case "feed pressure": {
      const left = feedWithReliefOpen(scene);
      return left && { left, right: feedLimit(scene), holds: ">=", words: "the feed pressure is the least allowed" };
    }
    case "pump capacity": {
      const left = moved(scene);
      return left && { left, right: demandHere(scene), holds: ">=", words: "the pump moves just what is asked of it" };
    }
  }
}

/** What the pump can move against the rise asked of it. */
function moved(scene: Scene): Step | null {
  const { pump } = scene.built;
  const FLOW = { unit: "m3/s", kind: "flow" } as const;
  switch (pump.kind) {
    case "none":
      return null;
    case "curve": {
      const last = pump.points.length - 1;
      return fromFile(`pump.points[${last}].flow`, {
        name: "flow at the end of the pump's curve",
        value: pump.points[last]?.flow ?? 0,
        ...FLOW,
      });
    }
    case "pulse": {
      const V = vacuum(scene);
      return (
        V &&
        worked(formulas.pulseFlow, {
          Q_p: fromFile("pump.flow", { name: "most it moves", value: pump.flow, ...FLOW }),
          V,
          S: fromFile("pump.suction", {
            name: "most vacuum it pulls",
            value: pump.suction,
            unit: "Pa",
            kind: "vacuum",
          }),
        })
      );
    }
    case "fixed": {
      if (!pump.slip || scene.model.slipPerRise(pump) === 0) return sweptFlow(pump);
      // The suction is asked at the demand here, whatever relief sends round.
      const there = scene.at({ pumped: scene.demand });
      const V = vacuum(there);
      const asked = V && neededRise(scene, V, feedLimit(scene));
      if (!V || !asked) return null;
      const p = worked(formulas.heldRise, { p: [asked, openRise(pump, V)] });
      return worked(formulas.movedWithSlip, { Q_p: sweptFlow(pump), k: slip(scene, pump), p });
    }
  }
}
