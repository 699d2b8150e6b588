import type { SystemFuel } from "@thirstline/spec/system";
import { degrees } from "./degrees.js";
import type { Pen } from "./Pen.js";
import type { Block } from "./yaml.js";

/** The fuel as it stands in a file, with how warm it is. */
export function writeFuel(fuel: SystemFuel, temperature: number, pen: Pen): Block {
  const { measured } = fuel;
  const own = pen.in("fuel", "measured");
  return {
    ...kindBlock(fuel, pen.in("fuel")),
    viscosity: measured?.viscosity?.map((one, at) => ({
      at: own.in("viscosity", at).write(one.temperature, degrees("temperature")),
      is: own.in("viscosity", at).write(one.kinematicViscosity, {
        key: "kinematicViscosity",
        unit: "kinematicViscosity",
        kind: "kinematicViscosity",
      }),
    })),
    density: measured?.density?.map((one, at) => ({
      at: own.in("density", at).write(one.temperature, degrees("temperature")),
      is: own.in("density", at).write(one.density, { key: "density", unit: "density", kind: "density" }),
    })),
    "cloud point": own.maybe(measured?.cloudPoint, degrees("cloudPoint", "coldPoint")),
    CFPP: own.maybe(measured?.coldFilterPluggingPoint, degrees("coldFilterPluggingPoint", "coldPoint")),
    "vapour pressure": own.maybe(measured?.reid, { key: "reid", unit: "pressure", kind: "vapourPressure" }),
    temperature: pen.write(temperature, degrees("temperature")),
  };
}

function kindBlock(fuel: SystemFuel, pen: Pen): Block {
  switch (fuel.kind) {
    case "diesel":
      return { kind: fuel.kind, grade: fuel.grade };
    case "biodiesel":
      return { kind: fuel.kind, share: pen.share(fuel.share, "share"), feedstock: fuel.feedstock, grade: fuel.grade };
    case "petrol":
      return { kind: fuel.kind, class: fuel.class, ethanol: pen.share(fuel.ethanol, "ethanol") };
    case "premix":
      return { kind: fuel.kind, ratio: fuel.ratio, class: fuel.class, ethanol: pen.share(fuel.ethanol, "ethanol") };
    case "measured":
      return { kind: fuel.kind, like: fuel.like };
    default:
      return { kind: fuel.kind };
  }
}
