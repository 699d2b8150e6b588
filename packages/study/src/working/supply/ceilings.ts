import { ceilings, type LimitName, marginsOf, type Passage } from "@thirstline/core";
import { limitsOf } from "../../check/limitsOf.js";
import { limitName } from "../../say/limitName.js";
import * as formulas from "../formulas/limits.js";
import type { Check, Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { inWords, renamed, searched, worked } from "../worked.js";
import { demand } from "./demand.js";
import { limitSides } from "./limitSides.js";
import { movedToTank } from "./pump.js";

const PASSAGES: readonly Passage[] = ["smooth", "early"];
/** Both sides of a limit are the same where they differ by no more. */
const ALIKE = 1e-9;
/** How far beyond a flow that stands on a step the other side of it is shown. */
const BEYOND = 1 + 1e-9;

type Found = ReturnType<typeof ceilings>;

/** Core's ceilings of every limit under a scene's elements and end. */
function found(scene: Scene): Found {
  return scene.kept("ceilings", () => {
    const { supply, fuel, built, setting, asked } = scene;
    return ceilings(supply, fuel, limitsOf(built).limits, asked.total, setting.end);
  });
}

/** The supply ceiling: the least of what the limits allow, but for one that is not asked; null where none binds. */
export function ceiling(scene: Scene, except: LimitName, name: string): Step | null {
  return scene.step(`ceiling ${except} ${name}`, () => {
    const all = found(scene).filter(({ limit, flow }) => limit !== except && flow < Infinity);
    const Q = all.flatMap(({ limit, flow }) => ofLimit(scene, limit, flow) ?? []);
    if (Q.length === 0) return inWords("no limit is met", { name, value: Infinity, unit: "m3/s", kind: "flow" });
    return worked(formulas.lowestCeiling, { Q }, { name, value: Math.min(...all.map(({ flow }) => flow)) });
  });
}

/** What is in hand before the first limit binds. */
export function inHand(scene: Scene, name: string): Step {
  return scene.step(`in hand ${name}`, () => {
    const all = found(scene).filter(({ limit, inHand: own }) => limit !== "vacuum clean" && own < Infinity);
    const i = all.flatMap((one) => inHandOf(scene, one) ?? []);
    if (i.length === 0) return inWords("no limit is met", { name, value: Infinity, unit: "1", kind: "ratio" });
    return worked(formulas.leastInHand, { i }, { name, value: Math.min(...all.map((one) => one.inHand)) });
  });
}

function inHandOf(scene: Scene, { limit, flow, inHand: value }: Found[number]): Step | null {
  const name = `in hand before ${limitName(limit, scene.built.pump.kind)} binds`;
  const ofDemand = flow / scene.asked.total - 1;
  if (Math.abs(ofDemand - value) <= ALIKE * (1 + Math.abs(value))) {
    const Q_c = ofLimit(scene, limit, flow);
    return Q_c && worked(formulas.inHand, { Q_c, Q: demand(scene) }, { name, value });
  }
  return ofPump(scene, limit, { name, value });
}

/** Where relief goes to the tank the suction line does not feel the demand: its ceiling is a flow of the pump. */
function ofPump(scene: Scene, limit: LimitName, more: { readonly name: string; readonly value: number }): Step | null {
  const { pump } = scene.built;
  if (pump.kind !== "fixed") return null;
  const readings = PASSAGES.map((passage) => {
    const own = scene.at({ passage, at: null, pumped: null });
    const flow = (1 + more.value) * own.model.suctionFlow(0);
    return { own, flow, left: marginAt(own.at({ pumped: flow * BEYOND }), limit) };
  });
  const { own, flow } = readings.reduce((least, one) => (one.left < least.left ? one : least));
  const plain = {
    name: "largest flow of the pump that this limit allows",
    value: flow,
    unit: "m3/s",
    kind: "flow",
  } as const;
  const checks = checksAt((at) => own.at({ pumped: at }), limit, flow);
  const Q_c = searched("the last flow at which the limit holds, found by bracketing", plain, checks);
  return worked(formulas.inHand, { Q_c, Q: renamed(movedToTank(own, pump), "the pump's own flow") }, more);
}

/** How far from a limit: 0 or more while it holds. */
function marginAt(scene: Scene, limit: LimitName): number {
  const sides = limitSides(scene, limit);
  if (!sides) return -Infinity;
  const over = sides.left.value - sides.right.value;
  return sides.holds === "<=" ? -over : over;
}

/** The largest demand at which a limit holds, in both readings of the passage, with what proves it. */
function ofLimit(scene: Scene, limit: LimitName, flow: number): Step | null {
  const plain = { name: `ceiling by ${limit}`, value: flow, unit: "m3/s", kind: "flow" } as const;
  const limits = limitsOf(scene.built).limits;
  const readings = PASSAGES.map((passage) => {
    const own = scene.at({ passage, at: null, pumped: null });
    const margin = marginsOf(own.model, limits).get(limit);
    return { own, left: margin ? margin(flow * BEYOND) : Infinity };
  });
  const { own } = readings.reduce((least, one) => (one.left < least.left ? one : least));
  const checks = checksAt((at) => own.at({ at }), limit, flow);
  if (checks.length === 0)
    return flow === 0 ? inWords("nothing can pass, so it is broken even without flow", plain) : null;
  const early = own.setting.passage === "early" ? "; turbulent flow from Re 2300 up decides here" : "";
  const words = `the last demand at which the limit holds, found by bracketing${early}`;
  return searched(words, plain, checks);
}

function checksAt(sceneAt: (flow: number) => Scene, limit: LimitName, flow: number): Check[] {
  const sides = limitSides(sceneAt(flow), limit);
  if (!sides) return [];
  const { left, right, holds, words } = sides;
  const scale = left.unit === "Pa" ? sceneAt(flow).supply.ambientPressure : Math.abs(right.value);
  if (Math.abs(left.value - right.value) <= ALIKE * scale) {
    return [{ words: `at this flow ${words}`, left, relation: "=", right, scale }];
  }
  const broken = holds === "<=" ? ">=" : "<=";
  if (flow === 0) return [{ words: "it is broken even without flow", left, relation: broken, right }];
  const beyond = limitSides(sceneAt(flow * BEYOND), limit);
  return [
    { words: "at this flow the limit still holds", left, relation: holds, right },
    ...(beyond
      ? [
          {
            words: "a hair beyond, where the drop steps, it is broken",
            left: beyond.left,
            relation: broken,
            right: beyond.right,
          } as const,
        ]
      : []),
  ];
}
