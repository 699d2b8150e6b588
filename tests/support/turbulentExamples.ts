import { fitting, frictionFactor, fuelState, line, parallel, series, solve } from "@thirstline/core";
import { type Answers, givenOf } from "./given.js";
import { readTable } from "./table.js";

// The turbulent worked examples of references/lines, each worked with the library from what the source gives. Where a source
// went on from a rounded figure, the row that names it is worked the same way; the row without is worked in full.

const given = readTable("lines/examples-given.csv");

const areaOf = (bore: number): number => (Math.PI / 4) * bore ** 2;

export const turbulentExamples: Readonly<Record<string, Answers>> = {
  "white-6.6": waterInAsphaltedIron(),
  "white-6.8": flowFromHeadLoss(),
  "white-6.16": pumpAgainstMinorLosses(),
  "white-6.17b": threeInParallel(),
};

function waterInAsphaltedIron(): Answers {
  const of = givenOf(given, "white-6.6");
  const [bore, length, velocity, rough] = [of("bore"), of("length"), of("velocity"), of("relative roughness")];
  const weight = of("specific weight");
  const fuel = fuelState({ density: weight / of("free fall"), kinematicViscosity: of("kinematic viscosity") });
  const drop = solve(line({ length, bore, roughness: rough * bore }), fuel).drop(velocity * areaOf(bore));
  const reynolds = (velocity * bore) / fuel.kinematicViscosity;
  const friction = frictionFactor(reynolds, rough);
  const rounded = Number(friction.toFixed(2));
  return {
    reynolds,
    "friction factor": friction,
    drop,
    "head loss": drop / weight,
    "drop with f 0.02": (drop * rounded) / friction,
    "head loss with f 0.02": (drop * rounded) / friction / weight,
  };
}

function flowFromHeadLoss(): Answers {
  const of = givenOf(given, "white-6.8");
  const [bore, length, rough] = [of("bore"), of("length"), of("relative roughness")];
  const fuel = fuelState({ density: of("density"), kinematicViscosity: of("kinematic viscosity") });
  const drop = of("density") * of("free fall") * of("head loss");
  const flow = solve(line({ length, bore, roughness: rough * bore }), fuel).flow(drop);
  const velocity = flow / areaOf(bore);
  const reynolds = (velocity * bore) / fuel.kinematicViscosity;
  return { velocity, flow, reynolds, "friction factor": frictionFactor(reynolds, rough) };
}

function pumpAgainstMinorLosses(): Answers {
  const of = givenOf(given, "white-6.16");
  const [flow, bore, length, rough] = [of("flow"), of("bore"), of("length"), of("relative roughness")];
  const [weight, freeFall, height] = [of("specific weight"), of("free fall"), of("rise")];
  const fuel = fuelState({ density: weight / freeFall, kinematicViscosity: of("kinematic viscosity") });
  const losses = ["entrance", "open globe valve", "bend", "elbow", "half-open gate valve", "exit"].map((kind) =>
    of(`k ${kind}`),
  );
  const path = series(line({ length, bore, roughness: rough * bore }), ...losses.map((k) => fitting({ bore, k })));
  const head = height + solve(path, fuel).drop(flow) / weight;
  const velocity = flow / areaOf(bore);
  const reynolds = (velocity * bore) / fuel.kinematicViscosity;
  const friction = frictionFactor(reynolds, rough);
  const feet = 0.3048;
  const printedVelocity = Number((velocity / feet).toFixed(2)) * feet;
  const lossFactor = (Number(friction.toFixed(4)) * length) / bore + losses.reduce((sum, k) => sum + k, 0);
  return {
    velocity,
    reynolds,
    "friction factor": friction,
    "pump head": head,
    "pump head with velocity 9.17 ft/s and f 0.0216": height + (lossFactor * printedVelocity ** 2) / (2 * freeFall),
    power: weight * flow * head,
  };
}

function threeInParallel(): Answers {
  const of = givenOf(given, "white-6.17b");
  const fuel = fuelState({ density: of("density"), kinematicViscosity: of("kinematic viscosity") });
  const pipes = [1, 2, 3].map((n) =>
    line({ length: of(`length ${n}`), bore: of(`bore ${n}`), roughness: of(`roughness ${n}`) }),
  );
  const solved = solve(parallel(...pipes), fuel);
  const flow = solved.flow(of("density") * of("free fall") * of("head loss"));
  const [bank] = solved.profile(flow);
  if (bank?.kind !== "bank") throw new Error("parallel pipes must profile as a bank");
  const [first = 0, second = 0, third = 0] = bank.branches.map(([pipe]) => pipe?.flow ?? Number.NaN);
  const printed = (one: number): number => Number((one * 3600).toFixed(1)) / 3600;
  return {
    flow,
    "flow 1": first,
    "flow 2": second,
    "flow 3": third,
    "flow from printed branches": printed(first) + printed(second) + printed(third),
  };
}
