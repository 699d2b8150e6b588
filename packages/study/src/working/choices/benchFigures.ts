import type { System, SystemPart } from "@thirstline/spec/system";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { figuresIn } from "../figures/figuresIn.js";
import * as formulas from "../formulas/bench.js";
import { fuelDensity } from "../fuel/density.js";
import { oneKelvin, temperature } from "../fuel/temperature.js";
import { fuelViscosity } from "../fuel/viscosity.js";
import type { Step } from "../Step.js";
import { filePlace } from "../scene/filePlace.js";
import { sceneOf } from "../scene/Scene.js";
import { freeFall } from "../supply/air.js";
import { fromFile, fromSource, inWords, worked } from "../worked.js";
import type { CardGiven } from "./CardGiven.js";
import { risesBefore } from "./risesBefore.js";

const LENGTH = { unit: "m", kind: "length" } as const;

/** Heads, relief, and how long a tank is to stand. */
export function benchFigures(given: CardGiven): FigureMaker[] {
  const { system, answer } = given;
  const figure = figuresIn("At the bench");
  const { settling, relief } = answer;
  const drop = { name: "size of the drops", unit: "m", kind: "particle size" } as const;
  return [
    ...answer.elements.map(({ name, head }) => figure(`head over ${name}`, () => headOver(system, name, head))),
    figure("relief of the pump", () =>
      relief === null
        ? null
        : fromFile("pump.relief", { name: "relief of the pump", value: relief, unit: "Pa", kind: "pressure" }),
    ),
    ...(settling.code === "time"
      ? [
          figure("size of the drops", () =>
            fromSource("common practice, no source", { ...drop, value: settling.size }),
          ),
          figure("depth of the deepest tank", () => deepest(system, settling.depth)),
          figure("time to settle", () => settlingStep(given, settling)),
        ]
      : []),
  ];
}

/** Depth of the fullest of the tanks that lead to a place, less the climb to it. */
function headOver(system: System, name: string, value: number): Step | null {
  const ways = system.tanks.flatMap((tank, at) => {
    const h = fullDepth(system, at);
    const own = risesBefore(system, ["tanks", at, "path"], tank.path, name);
    if (own.found) return [{ h, rises: own.rises }];
    const rest: [string, readonly SystemPart[]][] = [
      ["suction", system.suction],
      ["delivery", system.delivery ?? []],
    ];
    const rises = [...own.rises];
    for (const [side, parts] of rest) {
      const next = risesBefore(system, [side], parts, name);
      rises.push(...next.rises);
      if (next.found) return [{ h, rises }];
    }
    return [];
  });
  const heights = ways.map(({ h, rises: r }) =>
    r.length === 0 ? h : worked(formulas.headOver, { h, r }, { name: `fuel over ${name}` }),
  );
  const most = heights.find((one) => Math.abs(one.value - value) <= 1e-9 * Math.max(1, Math.abs(value)));
  return most ?? null;
}

function fullDepth(system: System, at: number): Step {
  const value = system.tanks[at]?.fullDepth ?? Number.NaN;
  const path = `${filePlace(system, ["tanks", at])}.full depth`;
  return fromFile(path, { name: "depth of the full tank", value, ...LENGTH });
}

function deepest(system: System, value: number): Step {
  const from = system.tanks.map((_, at) => fullDepth(system, at));
  const [only] = from;
  if (from.length === 1 && only) return only;
  return inWords("of the deepest tank", { name: "depth of the deepest tank", value, ...LENGTH }, from);
}

function settlingStep(
  { system, temperature: own }: CardGiven,
  { depth, size, time }: { readonly depth: number; readonly size: number; readonly time: number },
): Step {
  const scene = sceneOf(system, { temperature: own });
  const ICE = { name: "ice point", value: 273.15, unit: "K", kind: "temperature" } as const;
  const rho_w = worked(formulas.waterDensity, {
    rho_0: fromSource("M. Tanaka and others, Metrologia 38 (2001) 301; from memory", {
      name: "greatest density of water",
      value: 999.97495,
      unit: "kg/m3",
      kind: "density",
    }),
    T: temperature(scene),
    T_0: fromSource("exact by definition", ICE),
    T_1: oneKelvin,
  });
  const d = fromSource("common practice, no source", {
    name: "size of the drops",
    value: size,
    unit: "m",
    kind: "particle size",
  });
  const u = worked(formulas.settlingSpeed, {
    g: freeFall,
    d,
    rho_w,
    rho: fuelDensity(scene),
    nu: fuelViscosity(scene),
  });
  return worked(formulas.settlingTime, { h: deepest(system, depth), u }, { value: time });
}
