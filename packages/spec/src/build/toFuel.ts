import {
  type Fuel,
  fuelLike,
  fuels,
  petrolClasses,
  petrolOfClass,
  premix,
  withBiodiesel,
  withEthanol,
} from "@thirstline/core";
import type { System, SystemFuel, SystemGrade } from "../system/index.js";

const diesels: Readonly<Record<SystemGrade, Fuel>> = {
  summer: fuels.dieselSummer,
  winter: fuels.dieselWinter,
  arctic: fuels.dieselArctic,
};

/** The fuel each measured fuel may be like. */
const likes: Readonly<Record<Extract<SystemFuel, { kind: "measured" }>["like"], Fuel>> = {
  diesel: fuels.dieselWinter,
  biodiesel: fuels.biodieselSoy,
  paraffinic: fuels.paraffinic,
  kerosene: fuels.kerosene,
  petrol: fuels.petrol,
};

/** A system's fuel as the core has it: the published one of its kind, with what was measured in its place. */
export function toFuel(fuel: System["fuel"]): Fuel {
  const published = publishedFuel(fuel);
  return fuel.measured === undefined ? published : fuelLike(published, fuel.measured);
}

function publishedFuel(fuel: SystemFuel): Fuel {
  switch (fuel.kind) {
    case "diesel":
      return diesels[fuel.grade];
    case "biodiesel": {
      const pure = fuel.feedstock === "soy" ? fuels.biodieselSoy : fuels.biodieselRapeseed;
      if (fuel.share === 1) return pure;
      return withBiodiesel(diesels[fuel.grade ?? "winter"], fuel.share, pure);
    }
    case "paraffinic":
      return fuels.paraffinic;
    case "kerosene":
      return fuels.kerosene;
    case "petrol":
      return petrolWith(fuel.class, fuel.ethanol);
    case "premix":
      return premix(petrolWith(fuel.class, fuel.ethanol), fuel.ratio);
    case "measured":
      return likes[fuel.like];
  }
}

/** Petrol of a class with ethanol; the classes' own rule ends at 10 %, beyond it the general one serves. */
function petrolWith(name: string, ethanol: number): Fuel {
  const found = petrolClasses.find((one) => `${one.standard} ${one.class}` === name);
  // An unknown class cannot come from a file; the core refuses what a program may hand in.
  const { standard, class: own } = found ?? { standard: "EN 228" as const, class: name };
  if (ethanol <= 0.1) return petrolOfClass({ standard, class: own, ethanol });
  return withEthanol(petrolOfClass({ standard, class: own }), ethanol);
}
