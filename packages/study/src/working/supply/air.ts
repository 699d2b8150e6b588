import { FREE_FALL } from "@thirstline/core";
import { airPressure as airLaw, geopotential } from "../formulas/air.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { fromFile, fromSource, inWords, worked } from "../worked.js";

const MODEL = "US Standard Atmosphere 1976";

/** Acceleration of free fall. */
export const freeFall = fromSource("definition (3rd CGPM, 1901)", {
  name: "acceleration of free fall",
  value: FREE_FALL,
  unit: "m/s2",
});

/** Air pressure where the machine stands. */
export function airPressure(scene: Scene): Step {
  return scene.step("air pressure", () => {
    const { altitude, ambientPressure } = scene.built;
    const plain = { name: "altitude", value: altitude, unit: "m", kind: "altitude" } as const;
    const h =
      altitude === 0
        ? inWords("at the sea, where the file states no other altitude", plain)
        : fromFile("place.altitude", plain);
    const constant = (name: string, value: number, unit: string) => fromSource(MODEL, { name, value, unit });
    return worked(
      airLaw,
      {
        p_0: fromSource(MODEL, {
          name: "air pressure at the sea",
          value: 101325,
          unit: "Pa",
          kind: "absolute pressure",
        }),
        B: constant("fall of temperature with height", 0.0065, "K/m"),
        H: worked(geopotential, { r: constant("radius of the earth in the model", 6356766, "m"), h }),
        T_0: fromSource(MODEL, { name: "temperature at the sea", value: 288.15, unit: "K", kind: "temperature" }),
        g: freeFall,
        M: constant("molar mass of air", 0.0289644, "kg/mol"),
        R: constant("gas constant of the model", 8.31432, "J/(mol K)"),
      },
      { value: ambientPressure },
    );
  });
}

/** How high the machine stands. */
export function altitude(scene: Scene): Step {
  return fromFile("place.altitude", {
    name: "altitude",
    value: scene.built.altitude,
    unit: "m",
    kind: "altitude",
  });
}
