import { typicalHydrocarbons, waterSolubility } from "@thirstline/core";
import * as formulas from "../formulas/waterInFuel.js";
import { fuelDensity } from "../fuel/density.js";
import { oneKelvin, temperature } from "../fuel/temperature.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { fromFile, fromSource, worked } from "../worked.js";

/** Water in the fuel as it is delivered. */
export function total({ system }: Scene): Step {
  const value = system.deliveredFuel?.water ?? 0;
  return fromFile("delivered fuel.water", {
    name: "water in the delivered fuel",
    value,
    unit: "kg/m3",
    kind: "solids",
  });
}

/** Water the fuel dissolves; null where nobody knows how much this fuel does. */
export function dissolved(own: Scene): Step | null {
  const { fuel } = own.system;
  const kind = fuel.kind === "measured" ? fuel.like : fuel.kind;
  const wet = kind === "biodiesel" || ("ethanol" in fuel && fuel.ethanol > 0);
  if (wet || own.temperature < 233 || own.temperature > 373) return null;
  const make = typicalHydrocarbons[kind === "petrol" || kind === "premix" ? "petrol" : "light diesel"];
  const HEYWOOD = "J. B. Heywood, Internal Combustion Engine Fundamentals (1988), table D.4; from memory";
  const X = worked(
    formulas.solubility,
    {
      H: fromSource(HEYWOOD, {
        name: "mass ratio of hydrogen to carbon",
        value: make.hydrogenToCarbon,
        unit: "1",
        kind: "plain",
      }),
      T_0: oneKelvin,
      T: temperature(own),
      M_w: fromSource("R. R. Hibbard and R. L. Schalla, NACA RM E52D24 (1952)", {
        name: "molar mass of water",
        value: 0.018015,
        unit: "kg/mol",
      }),
      M: fromSource(HEYWOOD, { name: "molar mass of the fuel", value: make.molarMass, unit: "kg/mol" }),
    },
    { value: waterSolubility({ ...make, temperature: own.temperature }) },
  );
  return worked(formulas.dissolvedWater, { W: total(own), X, rho: fuelDensity(own) });
}

/** Water that is not dissolved. */
export function free(own: Scene): Step {
  const w = dissolved(own);
  if (w === null) return { ...total(own), name: "free water: how much this fuel dissolves is not known, so all of it" };
  return worked(formulas.freeWater, { W: total(own), w });
}
