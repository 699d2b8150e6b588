import * as formulas from "../formulas/pumps.js";
import { fuelDensity } from "../fuel/density.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { asked, fromFile, inWords, worked } from "../worked.js";

/** What the engine burns. */
export function burn(scene: Scene): Step {
  return scaled(scene, "burn", burnByFile(scene), scene.asked.burn);
}

/** What it sends back. */
export function returned(scene: Scene): Step {
  return scaled(scene, "return", returnByFile(scene), scene.asked.return);
}

/** Burn and return together, by the file or as asked for. */
export function demand(scene: Scene): Step {
  return scene.step("demand", () => {
    const { demand: other } = scene.setting;
    const plain = { name: "demand", value: scene.asked.total, unit: "m3/s", kind: "flow" } as const;
    if (other !== null) return asked("demand", plain);
    const sum = { Q_b: burnByFile(scene), Q_r: returnByFile(scene) };
    return worked(formulas.demandSum, sum, { name: "demand", value: scene.asked.total });
  });
}

/** The demand the path is worked out at: the one asked for, or one that a search or a curve puts in. */
export function demandHere(scene: Scene): Step {
  const { at } = scene.setting;
  if (at === null) return demand(scene);
  return inWords("put in here", { name: "demand", value: at, unit: "m3/s", kind: "flow" });
}

function burnByFile(scene: Scene): Step {
  const { demand: stated } = scene.system;
  if ("burn" in stated) {
    return fromFile("demand.burn", { name: "burn", value: stated.burn, unit: "m3/s", kind: "flow" });
  }
  const { power, specificConsumption } = stated;
  return worked(formulas.burnByPower, {
    P: fromFile("demand.power", { name: "power", value: power, unit: "W", kind: "power" }),
    b: fromFile("demand.specific consumption", {
      name: "specific consumption",
      value: specificConsumption,
      unit: "kg/J",
      kind: "specific consumption",
    }),
    rho: fuelDensity(scene),
  });
}

function returnByFile(scene: Scene): Step {
  const { return: value } = scene.system.demand;
  return fromFile("demand.return", { name: "return", value, unit: "m3/s", kind: "flow" });
}

function scaled(scene: Scene, name: string, own: Step, value: number): Step {
  if (scene.setting.demand === null) return { ...own, name, value };
  const Q_f = worked(
    formulas.demandSum,
    { Q_b: burnByFile(scene), Q_r: returnByFile(scene) },
    { name: "demand by the file" },
  );
  return worked(formulas.scaledFlow, { q: own, Q_a: demand(scene), Q_f }, { name, value });
}
