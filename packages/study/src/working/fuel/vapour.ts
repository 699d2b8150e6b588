import { ethanolVapourRaise, type VapourPressureLaw, vapourPressureAt } from "@thirstline/core";
import * as formulas from "../formulas/vapour.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { fromFile, fromSource, inWords, worked } from "../worked.js";
import { densityAt15 } from "./density.js";
import { fuelSource } from "./fuelSources.js";
import { oneKelvin, temperature } from "./temperature.js";

type Reid = Extract<VapourPressureLaw, { kind: "Reid" }>;

const psi = fromSource("definition: 0.45359237 kg × 9.80665 m/s² over a square of 0.0254 m", {
  name: "one pound-force per square inch",
  value: (0.45359237 * 9.80665) / 0.0254 ** 2,
  unit: "Pa",
  kind: "absolute pressure",
});
const rankine = fromSource("definition", { name: "one degree Rankine", value: 1 / 1.8, unit: "K", kind: "plain" });
const pascal = fromSource("definition", { name: "one pascal", value: 1, unit: "Pa", kind: "absolute pressure" });
/** Lift at whole per cents of ethanol, kPa: Directive 98/70/EC, Annex III. */
const lifts = [0, 3.7, 6.0, 7.2, 7.8, 8.0, 8.0, 7.9, 7.9, 7.8, 7.8];

/** Vapour pressure of the fuel at its temperature. */
export function vapourPressure(scene: Scene): Step {
  return scene.step("vapour pressure", () => ({
    ...vapourBy(scene, scene.built.fuel.vapourPressure),
    name: "vapour pressure",
    value: scene.fuel.vapourPressure,
  }));
}

function vapourBy(scene: Scene, law: VapourPressureLaw): Step {
  const source = fuelSource(scene, "vapour pressure");
  const value = vapourPressureAt(law, scene.temperature);
  switch (law.kind) {
    case "none":
      return inWords("no vapour pressure is known of this fuel; it counts as none", {
        name: "vapour pressure",
        value,
        unit: "Pa",
        kind: "absolute pressure",
      });
    case "two constants":
      return worked(
        formulas.twoConstantVapour,
        {
          p_0: pascal,
          A: fromSource(source, { name: "first constant", value: law.a, unit: "1", kind: "plain" }),
          B: fromSource(source, { name: "second constant", value: law.b, unit: "K", kind: "plain" }),
          T: temperature(scene),
        },
        { value },
      );
    case "Reid":
      return worked(
        formulas.petrolVapour,
        {
          p_1: psi,
          T: temperature(scene),
          T_r: rankine,
          S: fromSource(source, {
            name: "slope of the distillation curve",
            value: law.slope,
            unit: "1",
            kind: "plain",
          }),
          p_R: reidOf(scene, law, source),
        },
        { value },
      );
    case "highest of":
      return worked(formulas.highestVapour, { p: law.parts.map((part) => vapourBy(scene, part)) }, { value });
  }
}

function reidOf(scene: Scene, { reid, ethanol }: Reid, source: string): Step {
  const plain = { name: "Reid vapour pressure", value: reid, unit: "Pa", kind: "absolute pressure" } as const;
  const own =
    scene.system.fuel.measured?.reid === undefined
      ? fromSource(source, plain)
      : fromFile("fuel.vapour pressure", plain);
  if (ethanol === undefined) return own;
  return worked(formulas.raisedReid, { p_R: own, r: liftOf(ethanol) });
}

function liftOf({ share, rule }: NonNullable<Reid["ethanol"]>): Step {
  const name = "how far ethanol lifts it";
  const value = ethanolVapourRaise(share, rule);
  if (rule === "US waiver") {
    const source = "US EPA waiver: 1 psi from 9 % of ethanol on, nothing below";
    return fromSource(source, { name, value, unit: "Pa", kind: "pressure" });
  }
  const percent = Math.min(share * 100, 10);
  const below = Math.min(Math.floor(percent), 9);
  const row = (at: number, which: string) =>
    fromSource("Directive 98/70/EC, Annex III", {
      name: `lift in the row ${which}`,
      value: 1000 * (lifts[at] ?? Number.NaN),
      unit: "Pa",
      kind: "pressure",
    });
  return worked(
    formulas.ethanolLift,
    {
      r_1: row(below, "below"),
      r_2: row(below + 1, "above"),
      x: fromFile("fuel.ethanol", { name: "share of ethanol", value: percent / 100, unit: "1", kind: "ratio" }),
      n: fromSource("Directive 98/70/EC, Annex III", {
        name: "per cent of the row below",
        value: below,
        unit: "1",
        kind: "plain",
      }),
    },
    { name, value },
  );
}

/** Gas over fuel by volume at a vacuum, if all that can comes out. */
export function freedShare(scene: Scene, vacuum: Step, air: Step): Step {
  const L = worked(formulas.ostwald, {
    T_0: oneKelvin,
    T: temperature(scene),
    L_0: fromSource("ASTM D2779-92(2020); from memory", {
      name: "coefficient of air",
      value: 0.098,
      unit: "1",
      kind: "plain",
    }),
    rho_15: densityAt15(scene),
    rho_1: fromSource("definition", { name: "one kilogram per litre", value: 1000, unit: "kg/m3", kind: "density" }),
  });
  return worked(formulas.freedAir, { L, V: vacuum, p_a: air }, { name: "air freed" });
}
