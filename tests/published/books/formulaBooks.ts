import { fitting, fuelState, line, parallel, rise, series, solve } from "@thirstline/core";
import { type Answers, givenOf } from "../../support/given.js";
import { readTable } from "../../support/table.js";
import { areaOf, pipeAt, printed, where } from "./asIf.js";

// Worked examples whose books take the friction factor from a formula, worked with the library from what the books give.

const given = readTable("lines/formula-books-given.csv");

export const formulaBooks: Readonly<Record<string, Answers>> = {
  slope: oilOnASlope(),
  narrow: waterInANarrowPipe(),
  stainless: waterInStainlessSteel(),
  duct: ductToBeSized(),
  "long-duct": flowOfALongerDuct(),
  pair: twoInParallel(),
  gravity: flowByGravity(),
  series: threeInSeries(),
};

function oilOnASlope(): Answers {
  const of = givenOf(given, "slope");
  const [density, bore, length] = [of("density"), of("bore"), of("length")];
  const oil = fuelState({ density, kinematicViscosity: of("dynamic viscosity") / density });
  const drop = of("inlet pressure") - of("outlet pressure");
  const flow = (degrees: number) => {
    // The book's free fall is 9.81 m/s2: the climb is made as much higher.
    const height = ((length * of("free fall")) / 9.80665) * Math.sin((degrees * Math.PI) / 180);
    return solve(series(line({ length, bore, roughness: 0 }), rise({ height })), oil).flow(drop);
  };
  return { flow: flow(0), "flow up 15 degrees": flow(15), "flow down 15 degrees": flow(-15) };
}

function waterInANarrowPipe(): Answers {
  const of = givenOf(given, "narrow");
  const [density, bore, length, velocity] = [of("density"), of("bore"), of("length"), of("velocity")];
  const pipe = { bore, length, roughness: 0, density, dynamicViscosity: of("dynamic viscosity") };
  const flow = velocity * areaOf(bore);
  const { friction, drop } = pipeAt(pipe, flow);
  return {
    "friction factor": friction,
    "head loss": drop / (density * 9.80665),
    // The book's pound of force is 32.2 lb ft/s2.
    "drop with f 0.0355 and 32.2 ft/s2": (drop * printed(friction, 4) * 9.80665) / (friction * 32.2 * 0.3048),
    drop,
    power: drop * flow,
  };
}

function waterInStainlessSteel(): Answers {
  const of = givenOf(given, "stainless");
  const [density, flow] = [of("density"), of("flow")];
  const { velocity, reynolds, friction, drop } = pipeAt(
    {
      bore: of("bore"),
      length: of("length"),
      roughness: of("roughness"),
      density,
      dynamicViscosity: of("dynamic viscosity"),
    },
    flow,
  );
  const poundPerFoot = 4.4482216152605 / 0.3048 ** 2;
  const printedDrop = printed(drop / poundPerFoot / 100, 0) * 100 * poundPerFoot;
  return {
    velocity,
    reynolds,
    "friction factor": friction,
    drop,
    "drop in psi": drop,
    "head loss from the printed drop": printedDrop / (density * 9.80665),
    power: drop * flow,
  };
}

function ductToBeSized(): Answers {
  const of = givenOf(given, "duct");
  const [density, flow, length] = [of("density"), of("flow"), of("length")];
  const due = density * of("free fall") * of("head loss");
  const at = (bore: number) =>
    pipeAt({ bore, length, roughness: 0, density, dynamicViscosity: of("dynamic viscosity") }, flow);
  const bore = where((one) => -at(one).drop, -due, 0.1, 1);
  return { bore, velocity: at(bore).velocity, "friction factor": at(bore).friction };
}

function flowOfALongerDuct(): Answers {
  const of = givenOf(given, "long-duct");
  const density = of("density");
  const duct = { bore: of("bore"), length: of("length"), roughness: 0, density };
  const { flowAt } = pipeAt({ ...duct, dynamicViscosity: of("dynamic viscosity") }, 0.1);
  return { flow: flowAt(density * of("free fall") * of("head loss")) };
}

function twoInParallel(): Answers {
  const of = givenOf(given, "pair");
  const [density, dynamicViscosity, freeFall] = [of("density"), of("dynamic viscosity"), of("free fall")];
  const water = fuelState({ density, kinematicViscosity: dynamicViscosity / density });
  const shapes = [1, 2].map((n) => ({ bore: of(`bore ${n}`), length: of("length"), roughness: of("roughness") }));
  const solved = solve(parallel(...shapes.map((shape) => line(shape))), water);
  const head = (flow: number) => solved.drop(flow) / (density * freeFall);
  // What the pump puts in lifts the water and drives it through both pipes.
  const power = (flow: number) => density * freeFall * flow * (of("lift") + head(flow));
  const flow = where(power, of("power"), 1e-4, 1);
  const [bank] = solved.profile(flow);
  if (bank?.kind !== "bank") throw new Error("parallel pipes must profile as a bank");
  const [first, second] = shapes.map((shape, at) => {
    const own = bank.branches[at]?.[0]?.flow ?? Number.NaN;
    return { flow: own, ...pipeAt({ ...shape, density, dynamicViscosity }, own) };
  });
  if (!first || !second) throw new Error("a pipe is missing");
  return {
    flow,
    "flow 1": first.flow,
    "flow 2": second.flow,
    "velocity 1": first.velocity,
    "velocity 2 of the printed flow": printed(second.flow, 4) / areaOf(of("bore 2")),
    "reynolds 1": first.reynolds,
    "reynolds 2": second.reynolds,
    "friction factor 1": first.friction,
    "friction factor 2": second.friction,
    "head loss": head(flow),
    "pump head": of("lift") + head(flow),
  };
}

function flowByGravity(): Answers {
  const of = givenOf(given, "gravity");
  const [density, bore, length, flow] = [of("density"), of("bore"), of("length"), of("flow")];
  const pipe = { bore, length, roughness: of("roughness"), density, dynamicViscosity: of("dynamic viscosity") };
  const { fuel, velocity, friction } = pipeAt(pipe, flow);
  const path = series(line(pipe), fitting({ bore, k: of("k") }));
  const head = solve(path, fuel).drop(flow) / (density * of("free fall"));
  // The whole loss, moved to the figures the book goes on from.
  const full = (friction * length) / bore + of("k");
  const rounded = (printed(friction, 4) * length) / bore + of("k");
  const onPrinted = head * (rounded / full) * (printed(velocity, 2) / velocity) ** 2;
  return { velocity, "friction factor": friction, "head loss with velocity 3.06 m/s and f 0.0315": onPrinted };
}

function threeInSeries(): Answers {
  const of = givenOf(given, "series");
  const water = fuelState({ density: of("density"), kinematicViscosity: of("kinematic viscosity") });
  const pipes = [1, 2, 3].map((n) =>
    line({ length: of(`length ${n}`), bore: of(`bore ${n}`), roughness: of(`roughness ${n}`) }),
  );
  const flow = solve(series(...pipes), water).flow(of("density") * of("free fall") * of("head loss"));
  return { flow, velocity: flow / areaOf(of("bore 1")) };
}
