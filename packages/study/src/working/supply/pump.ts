import type { FixedPump } from "@thirstline/core";
import * as limits from "../formulas/limits.js";
import * as formulas from "../formulas/pumps.js";
import { fuelDynamicViscosity } from "../fuel/viscosity.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { fromFile, inWords, renamed, searched, worked } from "../worked.js";
import { demandHere } from "./demand.js";
import { vacuumHere } from "./vacuum.js";

const FLOW = { unit: "m3/s", kind: "flow" } as const;
const PRESSURE = { unit: "Pa", kind: "pressure" } as const;

/** Flow the suction line carries: the demand, or all the pump moves where its relief goes back to the tank. */
export function suctionFlow(scene: Scene): Step {
  return scene.step("suction flow", () => {
    const { pumped } = scene.setting;
    const { pump } = scene.built;
    const name = "suction flow";
    if (pumped !== null) return inWords("put in here", { name, value: pumped, ...FLOW });
    if (pump.kind !== "fixed" || pump.reliefTo === "inlet") return renamed(demandHere(scene), name);
    const Q = [demandHere(scene), movedToTank(scene, pump)];
    return worked(limits.highestCeiling, { Q }, { name, value: scene.suctionFlow });
  });
}

/** What a pump moves with its relief open to the tank. */
export function movedToTank(scene: Scene, pump: FixedPump): Step {
  const value = scene.model.suctionFlow(0);
  const name = "what the pump moves with its relief open";
  if (!pump.slip || scene.model.slipPerRise(pump) === 0) return renamed(sweptFlow(pump), name);
  const there = scene.at({ at: null, pumped: value });
  const V = vacuumHere(there, suctionFlow(there));
  if (V === null) return renamed(sweptFlow(pump), name);
  const plain = { name, value, ...FLOW };
  const p = worked(formulas.riseToTankRelief, { p_r: reliefPressure(pump), V });
  return searched("the flow at which the pump moves what its slip leaves, found by bracketing", plain, [
    {
      words: "at this flow the pump moves just this much",
      left: worked(formulas.movedWithSlip, { Q_p: sweptFlow(pump), k: slip(scene, pump), p }),
      relation: value === 0 ? "<=" : "=",
      right: inWords("as found", plain),
    },
  ]);
}

/** The pump's swept flow. */
export function sweptFlow(pump: FixedPump): Step {
  return fromFile("pump.flow", { name: "swept flow of the pump", value: pump.flow, ...FLOW });
}

/** Pressure at which relief opens. */
function reliefPressure(pump: FixedPump): Step {
  return fromFile("pump.relief", { name: "pressure at which relief opens", value: pump.relief, ...PRESSURE });
}

/** Slip per pressure rise under this fuel. */
export function slip(scene: Scene, pump: FixedPump): Step {
  const { flow, rise, dynamicViscosity } = pump.slip ?? { flow: 0, rise: 1, dynamicViscosity: 1 };
  return worked(formulas.slipPerRise, {
    q: fromFile("pump.slip.flow", { name: "slip as measured", value: flow, ...FLOW }),
    p: fromFile("pump.slip.rise", { name: "pressure rise it was measured at", value: rise, ...PRESSURE }),
    mu_t: fromFile("pump.slip.viscosity", {
      name: "dynamic viscosity it was measured at",
      value: dynamicViscosity,
      unit: "Pa s",
      kind: "dynamic viscosity",
    }),
    mu: fuelDynamicViscosity(scene),
  });
}

/** Rise over the pump at the demand; null where it is not stated. */
export function pumpRise(scene: Scene, V: Step): Step | null {
  const { pump } = scene.built;
  const name = "pressure rise of the pump";
  const value = scene.model.state(scene.demand).pumpRise;
  if (value === null) return null;
  switch (pump.kind) {
    case "none":
      return inWords("there is no pump", { name, value, ...PRESSURE });
    case "pulse":
      return null;
    case "curve":
      return riseOnCurve(scene, value);
    case "fixed": {
      const open = openRise(pump, V);
      if (scene.suctionFlow > scene.demand) return { ...open, name, value };
      if (pump.flow < scene.demand) return inWords("more is asked than it moves", { name, value, ...PRESSURE });
      if (!pump.slip || scene.model.slipPerRise(pump) === 0) return { ...open, name, value };
      const k = slip(scene, pump);
      const spare = worked(formulas.riseOfSpare, { Q_p: sweptFlow(pump), Q: demandHere(scene), k });
      return worked(formulas.lesserRise, { p: [open, spare] }, { name, value });
    }
  }
}

/** Rise with the relief open. */
export function openRise(pump: FixedPump, V: Step): Step {
  return pump.reliefTo === "inlet"
    ? reliefPressure(pump)
    : worked(formulas.riseToTankRelief, { p_r: reliefPressure(pump), V });
}

/** Rise on the pump's curve at the demand, or its end's where the demand lies beyond. */
export function riseOnCurve(scene: Scene, value: number): Step {
  const { pump } = scene.built;
  const points = pump.kind === "curve" ? pump.points : [];
  const name = "pressure rise of the pump";
  const after = points.findIndex(({ flow }) => flow >= scene.demand);
  const [left, right] = [points[after - 1], points[after]];
  const read = (at: number, key: "flow" | "rise") => {
    const shown = key === "flow" ? FLOW : PRESSURE;
    return fromFile(`pump.points[${at}].${key}`, {
      name: `${key} of the point`,
      value: points[at]?.[key] ?? 0,
      ...shown,
    });
  };
  if (!left || !right) {
    const end = right ? 0 : points.length - 1;
    return { ...read(end, "rise"), name: `${name}, at the ${right ? "first" : "last"} point of its curve`, value };
  }
  return worked(
    formulas.riseOnCurve,
    {
      p_1: read(after - 1, "rise"),
      p_2: read(after, "rise"),
      Q: demandHere(scene),
      Q_1: read(after - 1, "flow"),
      Q_2: read(after, "flow"),
    },
    { name, value },
  );
}
