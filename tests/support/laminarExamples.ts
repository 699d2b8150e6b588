import { fuelState, line, rise, series, solve } from "@thirstline/core";
import { type Answers, givenOf } from "./given.js";
import { readTable } from "./table.js";

// The laminar worked examples of references/lines, each worked with the library from what the source gives. Where a source
// went on from a rounded figure, the row that names it is worked the same way; the row without is worked in full.

const given = readTable("lines/examples-given.csv");

const areaOf = (bore: number): number => (Math.PI / 4) * bore ** 2;

export const laminarExamples: Readonly<Record<string, Answers>> = {
  "white-6.4": oilUpAnIncline(),
  "munson-8.2": laminarOil(),
  "openstax-iv": infusion(),
  "giancoli-62": oilPipeline(),
};

function oilUpAnIncline(): Answers {
  const of = givenOf(given, "white-6.4");
  const [bore, length, nu, density] = [of("bore"), of("length"), of("kinematic viscosity"), of("density")];
  const pipe = line({ length, bore, roughness: 0 });
  const fuel = fuelState({ density, kinematicViscosity: nu });
  const climb = rise({ height: length * Math.sin(of("slope")) });
  const flow = solve(series(pipe, climb), fuel).flow(of("inlet pressure") - of("outlet pressure"));
  const velocity = flow / areaOf(bore);
  const headLoss = solve(pipe, fuel).drop(flow) / (density * of("free fall"));
  return {
    "head loss": headLoss,
    flow,
    velocity,
    reynolds: (velocity * bore) / nu,
    "reynolds with velocity 2.704 m/s": (Number(velocity.toFixed(3)) * bore) / nu,
  };
}

function laminarOil(): Answers {
  const of = givenOf(given, "munson-8.2");
  const [mu, density, bore, length, flow] = [
    of("dynamic viscosity"),
    of("density"),
    of("bore"),
    of("length"),
    of("flow"),
  ];
  const fuel = fuelState({ density, kinematicViscosity: mu / density });
  const pipe = line({ length, bore, roughness: 0 });
  const drop = solve(pipe, fuel).drop(flow);
  const velocity = flow / areaOf(bore);
  // At the slope asked for, the head of the falling oil just makes up for its friction.
  const headPerMetre = solve(rise({ height: 1 }), fuel).drop(flow);
  return {
    drop,
    reynolds: (velocity * bore * density) / mu,
    "reynolds with velocity 0.0637 m/s": (Number(velocity.toFixed(4)) * bore * density) / mu,
    "slope without drop": Math.asin(-drop / (headPerMetre * length)),
    "slope without drop at free fall 9.81 m/s2": Math.asin(-drop / (density * of("free fall") * length)),
  };
}

function infusion(): Answers {
  const of = givenOf(given, "openstax-iv");
  const fuel = fuelState({ density: of("density"), kinematicViscosity: of("dynamic viscosity") / of("density") });
  const needle = line({ length: of("length"), bore: 2 * of("radius"), roughness: 0 });
  const drop = solve(needle, fuel).drop(of("flow"));
  return { drop, "inlet pressure": of("outlet pressure") + drop };
}

function oilPipeline(): Answers {
  const of = givenOf(given, "giancoli-62");
  const fuel = fuelState({ density: of("density"), kinematicViscosity: of("dynamic viscosity") / of("density") });
  return { drop: solve(line({ length: of("length"), bore: of("bore"), roughness: 0 }), fuel).drop(of("flow")) };
}
