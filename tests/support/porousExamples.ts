import { filter, fuelState, solve } from "@thirstline/core";
import { type Answers, givenOf } from "./given.js";
import { readTable } from "./table.js";

// The porous examples of references/porous, worked with a filter whose medium is the bed: Darcy's law with Forchheimer's term.

const given = readTable("porous/examples-given.csv");

export const porousExamples: Readonly<Record<string, Answers>> = {
  "geankoplis-bed": packedBed(),
  "heath-sand": sand(),
  "ergun-grains": grains(),
};

/** Ergun's two coefficients as a medium: permeability, m2, and inertia, 1/m. */
function ergun(grain: number, porosity: number): { permeability: number; inertia: number } {
  return {
    permeability: (grain ** 2 * porosity ** 3) / (150 * (1 - porosity) ** 2),
    inertia: (1.75 * (1 - porosity)) / (grain * porosity ** 3),
  };
}

function packedBed(): Answers {
  const of = givenOf(given, "geankoplis-bed");
  const [grain, porosity, viscosity] = [of("grain"), of("porosity"), of("dynamic viscosity")];
  const area = (Math.PI / 4) * of("bed diameter") ** 2;
  const bed = filter({ media: { area, thickness: of("length"), ...ergun(grain, porosity) } });
  const densityAt = (pressure: number) => (pressure * of("molar mass")) / (of("gas constant") * of("temperature"));
  // The drop needs the density at mean pressure and the mean pressure needs the drop: each round gains two digits.
  let drop = 0;
  let density = 0;
  for (let round = 0; round < 20; round++) {
    density = densityAt(of("inlet pressure") - drop / 2);
    const air = fuelState({ density, kinematicViscosity: viscosity / density });
    drop = solve(bed, air).drop(of("mass flow") / density);
  }
  const reynolds = (grain * of("mass flow")) / (area * (1 - porosity) * viscosity);
  return { reynolds, "mean density": density, drop };
}

function sand(): Answers {
  const of = givenOf(given, "heath-sand");
  const [viscosity, density, freeFall] = [of("dynamic viscosity"), of("density"), of("free fall")];
  const permeability = (of("conductivity") * viscosity) / (density * freeFall);
  const bed = filter({ media: { area: 1, thickness: 1, permeability } });
  const water = fuelState({ density, kinematicViscosity: viscosity / density });
  const flux = solve(bed, water).flow(density * freeFall * of("gradient"));
  return {
    permeability,
    "permeability in darcy": permeability / of("darcy"),
    flux,
    "seepage velocity": flux / of("porosity"),
  };
}

function grains(): Answers {
  const of = givenOf(given, "ergun-grains");
  const [grain, porosity, viscosity, density] = [of("grain"), of("porosity"), of("dynamic viscosity"), of("density")];
  const fuel = fuelState({ density, kinematicViscosity: viscosity / density });
  const { permeability, inertia } = ergun(grain, porosity);
  const sheet = { area: 1, thickness: of("length"), permeability };
  const drop = solve(filter({ media: { ...sheet, inertia } }), fuel).drop(of("velocity"));
  const viscous = solve(filter({ media: sheet }), fuel).drop(of("velocity"));
  return {
    // Kozeny and Carman put 180 where Ergun puts 150.
    "kozeny-carman permeability": (permeability * 150) / 180,
    "viscous drop": viscous,
    "inertial drop": drop - viscous,
    drop,
  };
}
