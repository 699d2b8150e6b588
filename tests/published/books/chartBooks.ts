import { fitting, fuelState, line, rise, series, solve } from "@thirstline/core";
import { type Answers, givenOf } from "../../support/given.js";
import { readTable } from "../../support/table.js";
import { areaOf, pipeAt } from "./asIf.js";

// Worked examples whose books read the friction factor off Moody's chart, worked with the library from what the books give.

const given = readTable("lines/chart-books-given.csv");

export const chartBooks: Readonly<Record<string, Answers>> = {
  "munson-air": airInASmallTube(),
  "munson-house": waterToAnUpperFloor(),
  "munson-alaska": longPipeline(),
  "white-6.7": oilDownASlope(),
  "fox-8.6": crudeOilLine(),
  "geankoplis-2.10-3": liquidInSteel(),
};

function airInASmallTube(): Answers {
  const of = givenOf(given, "munson-air");
  const [density, bore, length, velocity] = [of("density"), of("bore"), of("length"), of("velocity")];
  const pipe = { bore, length, roughness: of("roughness"), density, dynamicViscosity: of("dynamic viscosity") };
  const { reynolds, friction, drop } = pipeAt(pipe, velocity * areaOf(bore));
  // Were it laminar still: the drop at a flow that is, carried on in step with flow.
  const slow = (velocity * areaOf(bore)) / 100;
  return { reynolds, "laminar drop": 100 * pipeAt(pipe, slow).drop, "friction factor": friction, drop };
}

function waterToAnUpperFloor(): Answers {
  const of = givenOf(given, "munson-house");
  const [density, bore, length, flow] = [of("density"), of("bore"), of("length"), of("flow")];
  const roughness = of("relative roughness") * bore;
  const { fuel, velocity, friction, drop } = pipeAt(
    { bore, length, roughness, density, dynamicViscosity: of("dynamic viscosity") },
    flow,
  );
  const jet = (density / 2) * ((flow / areaOf(of("outlet"))) ** 2 - velocity ** 2);
  // The book's free fall is 32.2 ft/s2: the climb is made as much higher.
  const climb = rise({ height: (of("lift") * of("free fall")) / 9.80665 });
  const pipe = line({ length, bore, roughness });
  const through = (...parts: Parameters<typeof solve>[0][]) => jet + solve(series(...parts), fuel).drop(flow);
  return {
    velocity,
    "friction factor": friction,
    "pressure without losses": through(climb),
    "pressure with friction": jet + drop + solve(climb, fuel).drop(flow),
    pressure: through(climb, pipe, fitting({ bore, k: of("k") })),
  };
}

function longPipeline(): Answers {
  const of = givenOf(given, "munson-alaska");
  const [density, bore, velocity] = [of("density"), of("bore"), of("velocity")];
  const { reynolds, friction, drop } = pipeAt(
    {
      bore,
      length: of("length"),
      roughness: of("relative roughness") * bore,
      density,
      dynamicViscosity: of("dynamic viscosity"),
    },
    velocity * areaOf(bore),
  );
  return { reynolds, "friction factor": friction, "head loss": drop / (density * of("free fall")) };
}

function oilDownASlope(): Answers {
  const of = givenOf(given, "white-6.7");
  const [density, bore, length, flow] = [of("density"), of("bore"), of("length"), of("flow")];
  const pipe = { bore, length, roughness: of("roughness") };
  const dynamicViscosity = of("kinematic viscosity") * density;
  const { velocity, friction, drop } = pipeAt({ ...pipe, density, dynamicViscosity }, flow);
  const fall = rise({ height: (-length * Math.sin(of("slope")) * of("free fall")) / 9.80665 });
  const oil = fuelState({ density, kinematicViscosity: of("kinematic viscosity") });
  return {
    velocity,
    "friction factor": friction,
    "head loss": drop / (density * of("free fall")),
    drop: solve(series(line(pipe), fall), oil).drop(flow),
  };
}

function crudeOilLine(): Answers {
  const of = givenOf(given, "fox-8.6");
  const [density, bore] = [of("density"), of("bore")];
  const barrel = 42 * 231 * 0.0254 ** 3;
  const flow = (of("barrels a day") * barrel) / 86400;
  const dynamicViscosity = of("dynamic viscosity");
  const roughness = of("relative roughness") * bore;
  const mile = pipeAt({ bore, length: 1609.344, roughness, density, dynamicViscosity }, flow);
  const length = (of("drop") / mile.drop) * 1609.344;
  return { velocity: mile.velocity, "friction factor": mile.friction, length };
}

function liquidInSteel(): Answers {
  const of = givenOf(given, "geankoplis-2.10-3");
  const [density, bore, velocity] = [of("density"), of("bore"), of("velocity")];
  const { reynolds, friction, drop } = pipeAt(
    {
      bore,
      length: of("length"),
      roughness: of("roughness"),
      density,
      dynamicViscosity: of("dynamic viscosity"),
    },
    velocity * areaOf(bore),
  );
  // Fanning's factor is a quarter of Darcy's.
  return { reynolds, "fanning factor": friction / 4, "friction loss": drop / density };
}
