import type { SystemOrifice, SystemRise, SystemStrainer, SystemValve } from "@thirstline/spec/system";
import { orificeDrop, riseDrop, valveDrop } from "../formulas/fittings.js";
import * as screens from "../formulas/screens.js";
import { fuelDensity } from "../fuel/density.js";
import { fuelViscosity } from "../fuel/viscosity.js";
import type { Step } from "../Step.js";
import { freeFall } from "../supply/air.js";
import { fromSource, inWords, worked } from "../worked.js";
import { ofPart, type PartScene } from "./PartScene.js";

/** Static head of a climb of the path. */
export function systemRiseDrop(given: PartScene<SystemRise>): Step {
  const h = ofPart(given, "", { name: "height it climbs", value: given.part.height, unit: "m", kind: "length" });
  return worked(riseDrop, { rho: fuelDensity(given.scene), g: freeFall, h }, { part: given.path });
}

/** Drop of a valve of the path. */
export function systemValveDrop(given: PartScene<SystemValve>): Step {
  const { part, path, scene, flow } = given;
  const KV = "IEC 60534-1";
  return worked(
    valveDrop,
    {
      p_o: ofPart(given, "opening", {
        name: "pressure at which it opens",
        value: part.opening,
        unit: "Pa",
        kind: "pressure",
      }),
      p_1: fromSource(KV, { name: "one bar", value: 1e5, unit: "Pa", kind: "pressure" }),
      rho: fuelDensity(scene),
      rho_1: fromSource(KV, {
        name: "density of the water Kv is stated for",
        value: 1000,
        unit: "kg/m3",
        kind: "density",
      }),
      Q: flow,
      K_v: ofPart(given, "kv", { name: "flow coefficient Kv", value: part.kv, unit: "m3/s", kind: "flow" }),
    },
    { part: path },
  );
}

/** Drop of an orifice of the path. */
export function systemOrificeDrop(given: PartScene<SystemOrifice>): Step {
  const { part, path, scene, flow } = given;
  const name = "discharge coefficient";
  return worked(
    orificeDrop,
    {
      rho: fuelDensity(scene),
      Q: flow,
      C_d: ofPart(given, name, { name, value: part.dischargeCoefficient, unit: "1", kind: "plain" }),
      d: throatOf(given),
    },
    { part: path },
  );
}

/** Diameter of an orifice's hole. */
export function throatOf(given: PartScene<SystemOrifice>): Step {
  const { diameter } = given.part;
  return ofPart(given, "diameter", { name: "diameter of the hole", value: diameter, unit: "m", kind: "bore" });
}

/** Drop of a strainer of the path: the lowest, middle or highest of three laws. */
export function systemStrainerDrop(given: PartScene<SystemStrainer>): Step {
  const { part, path, scene, flow } = given;
  const size = { unit: "m", kind: "particle size" } as const;
  const w = ofPart(given, "aperture", { name: "clear opening", value: part.aperture, ...size });
  const d = ofPart(given, "wire", { name: "wire diameter", value: part.wire, ...size });
  const A = ofPart(given, "area", { name: "area of the screen", value: part.area, unit: "m2", kind: "area" });
  const u = worked(screens.faceVelocity, { Q: flow, A }, { part: path });
  if (u.value === 0) {
    return inWords("without flow a screen costs nothing", {
      name: "drop of the strainer",
      value: 0,
      unit: "Pa",
      kind: "pressure",
      part: path,
    });
  }
  const fuel = { rho: fuelDensity(scene), nu: fuelViscosity(scene) };
  const b = worked(screens.openArea, { w, d });
  const p = [
    worked(
      screens.armourCannon,
      {
        ...fuel,
        w,
        d,
        a: worked(screens.clothSurface, { w, d }),
        e: worked(screens.clothPorosity, { w, d }),
        u,
      },
      { name: "drop by Armour and Cannon's law" },
    ),
    worked(screens.ehrhardt, { ...fuel, d, b, u }, { name: "drop by Ehrhardt's law" }),
    worked(screens.brundrett, { ...fuel, d, b, u }, { name: "drop by Brundrett's law" }),
  ];
  const { lowestScreen, middleScreen, highestScreen } = screens;
  const law = { low: lowestScreen, middle: middleScreen, high: highestScreen }[scene.setting.end];
  return worked(law, { Q: flow, p }, { part: path });
}
