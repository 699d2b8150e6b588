import { densityAt15, fuelDensity } from "../fuel/density.js";
import { temperature } from "../fuel/temperature.js";
import { freedShare, vapourPressure } from "../fuel/vapour.js";
import { fuelDynamicViscosity, fuelViscosity } from "../fuel/viscosity.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { airPressure, altitude } from "../supply/air.js";
import { burn, demand, returned } from "../supply/demand.js";
import { vacuum } from "../supply/pressures.js";
import { suctionFlow } from "../supply/pump.js";
import { fromFile, fromSource, inWords } from "../worked.js";
import type { FigureMaker } from "./FigureMaker.js";

const ASKED = "Demand and place";
const FUEL = "Fuel";

/** What the engine asks for, where it stands, and what its fuel is. */
export function fuelFigures(scene: Scene): FigureMaker[] {
  const now = scene.at({ elements: "now" });
  const { fuel, cautions } = { fuel: scene.built.fuel, cautions: scene.fuel.cautions };
  const figure = (group: string, name: string, make: () => Step | null): FigureMaker => ({ group, name, make });
  return [
    figure(ASKED, "temperature", () => temperature(scene)),
    figure(ASKED, "burn", () => burn(scene)),
    figure(ASKED, "return", () => returned(scene)),
    figure(ASKED, "demand", () => demand(scene)),
    figure(ASKED, "suction flow", () => ({ ...suctionFlow(scene), name: "suction flow" })),
    figure(ASKED, "altitude", () => altitude(scene)),
    figure(ASKED, "air pressure", () => airPressure(scene)),
    figure(FUEL, "fuel density", () => fuelDensity(scene)),
    figure(FUEL, "density at 15 °C", () => densityAt15(scene)),
    figure(FUEL, "fuel viscosity", () => fuelViscosity(scene)),
    figure(FUEL, "fuel dynamic viscosity", () => fuelDynamicViscosity(scene)),
    figure(FUEL, "vapour pressure", () => vapourPressure(scene)),
    figure(FUEL, "cloud point", () => coldPoint(scene, "cloud point", fuel.cloudPoint)),
    figure(FUEL, "CFPP", () => coldPoint(scene, "CFPP", fuel.coldFilterPluggingPoint)),
    figure(FUEL, "highest cloud point of its kind", () =>
      coldPoint(scene, "highest cloud point of its kind", fuel.cloudPointLimit),
    ),
    figure(FUEL, "coldest fuel data", () => ofFuel(scene, "coldest fuel data", fuel.range.from)),
    figure(FUEL, "warmest fuel data", () => ofFuel(scene, "warmest fuel data", fuel.range.to)),
    ...(cautions.some(({ code }) => code === "above range") ? [figure(FUEL, "no bound below", () => noBound())] : []),
    ...cautions.flatMap((caution): FigureMaker[] => {
      if (caution.code === "beyond measured points") {
        return [
          figure(FUEL, "coldest measured viscosity", () => ofFuel(scene, "coldest measured viscosity", caution.from)),
          figure(FUEL, "warmest measured viscosity", () => ofFuel(scene, "warmest measured viscosity", caution.to)),
        ];
      }
      if (caution.code !== "part outside range") return [];
      const { part, share, from, to } = caution;
      const blended = { name: `share of ${part}`, value: share, unit: "1", kind: "ratio" } as const;
      return [
        figure(FUEL, `share of ${part}`, () => fromFile("fuel", blended)),
        figure(FUEL, `coldest data of ${part}`, () => ofFuel(scene, `coldest data of ${part}`, from)),
        figure(FUEL, `warmest data of ${part}`, () => ofFuel(scene, `warmest data of ${part}`, to)),
      ];
    }),
    figure(FUEL, "air freed under suction", () => {
      const V = vacuum(now);
      const freed = V && scene.temperature >= 228 && scene.temperature <= 423;
      return V && freed ? { ...freedShare(scene, V, airPressure(scene)), name: "air freed under suction" } : null;
    }),
  ];
}

/** A cold-flow temperature of the fuel: measured, or published for its kind; null where none is known. */
function coldPoint(scene: Scene, name: string, value: number | undefined): Step | null {
  if (value === undefined) return null;
  const { measured } = scene.system.fuel;
  const stated = name === "CFPP" ? measured?.coldFilterPluggingPoint : measured?.cloudPoint;
  if (name !== "highest cloud point of its kind" && stated === value) {
    return fromFile(`fuel.${name}`, { name, value, unit: "K", kind: "temperature" });
  }
  return ofFuel(scene, name, value);
}

function ofFuel({ built }: Scene, name: string, value: number): Step | null {
  if (!Number.isFinite(value)) return null;
  const plain = { name, value, unit: "K", kind: "temperature" } as const;
  return fromSource(`published for ${built.fuel.name}: ${built.fuel.sources.join("; ")}`, plain);
}

/** What a remark on fuel above its data says of how far down they go. */
function noBound(): Step {
  const words = "the fuel is above its data, so no bound below matters: from 0 K on";
  return inWords(words, { name: "no bound below", value: 0, unit: "K", kind: "temperature" });
}
