import type { z } from "zod";
import type { SystemAbsorber } from "../../system/Filter.js";
import { also } from "../also.js";
import { block } from "../block.js";
import { given } from "../given.js";
import { measured, plain, share, viscous } from "../leaves/index.js";
import { checkTestFluid, dynamicViscosityOf } from "../testFluid.js";

/** Density of water, kg/m3, at 21 degC, as core takes it for a bowl. */
const WATER_DENSITY = 998;

/** How well a filter separates free water, as a file has it. */
export const separationBlock = also(
  block("water separation", "{ efficiency: 95 %, at: 200 L/h }", {
    efficiency: share("a share of the free water", "95 %"),
    at: measured("flow"),
  }),
  (data, report) => {
    if (data.efficiency === 1) {
      const message =
        "no separator takes all water at any flow; write what its test could still see pass, such as 99.9 %";
      report(["efficiency"], "out of range", message);
    }
  },
);

/** How an element that absorbs water closes, as a file has it. */
export const absorbsBlock = also(
  block("an absorbing element", "{ water: 200 mL, restriction: 4 }", {
    water: measured("absorbedWater"),
    restriction: plain({
      words: "a restriction (resistance over clean)",
      least: 1.001,
      most: 1e6,
      example: 4,
    }).optional(),
    rise: measured("pressure").optional(),
    flow: measured("flow").optional(),
    viscosity: viscous().optional(),
    density: measured("density").optional(),
  }),
  (data, report) => {
    const ofTest = (["rise", "flow", "viscosity", "density"] as const).filter((key) => key in data);
    if ("restriction" in data) {
      for (const key of ofTest) {
        report([key], "stated twice", "the restriction says how far it had closed already; leave one of the two out");
      }
      return;
    }
    if (ofTest.length === 0) {
      const message =
        "missing; write the restriction after that water, such as 4, or the rise, with flow and viscosity";
      report(["restriction"], "missing", message);
      return;
    }
    for (const [key, right] of [
      ["rise", "35 kPa"],
      ["flow", "200 L/h"],
      ["viscosity", "3 mm2/s"],
    ] as const) {
      if (!(key in data))
        report([key], "missing", `missing; the rise was seen at a flow of some fuel: write "${right}"`);
    }
    checkTestFluid(data, report);
  },
);

/** An absorbing element in SI. */
export function toAbsorber(data: z.output<typeof absorbsBlock>): SystemAbsorber {
  const water = data.water * WATER_DENSITY;
  if (data.restriction !== undefined) return { water, restriction: data.restriction };
  const { rise = Number.NaN, flow = Number.NaN, density } = data;
  return given({ water, rise, flow, dynamicViscosity: dynamicViscosityOf(data), density });
}
