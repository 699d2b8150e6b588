import { binCount, sizeEdges } from "@thirstline/core";
import { filtersWithPlaces } from "../figures/filterAt.js";
import * as formulas from "../formulas/soil.js";
import type { Step } from "../Step.js";
import { inWords, worked } from "../worked.js";
import { binEfficiency } from "./efficiency.js";
import type { LifeScene } from "./lifeFacts.js";
import { type Passing, passingOf, tankFlows } from "./passing.js";
import { seasonOf } from "./yearSteps.js";

/** The first season's scene at its first load. */
export function firstScene({ scene, facts }: LifeScene) {
  const phase = facts.given.phases[0];
  const load = phase?.loads[0];
  const season = facts.duty.seasons.find((one) => one.phase.fuel === phase?.fuel);
  const demand = load ? load.demand.burn + load.demand.return : 0;
  const temperature = season?.temperature ?? facts.built.temperature;
  return { own: scene.at({ temperature, at: demand, demand: null, elements: "now" }), burn: load?.demand.burn ?? 0 };
}

/** What of a size passes each part then. */
export function binPassing(life: LifeScene, bin: number): Passing {
  const { own } = firstScene(life);
  return own.kept(`passing ${bin}`, () => {
    const places = filtersWithPlaces(own);
    return passingOf(own, (name) => {
      const element = life.facts.given.elements.find((one) => one.name === name);
      const place = places.find(({ part }) => part.name === name);
      if (!element?.efficiency || !place) return null;
      return own.kept(`efficiency ${name} ${bin}`, () =>
        binEfficiency(own, place, bin, element.efficiency?.[bin] ?? 0),
      );
    });
  });
}

/** How much of a size there is in the tank for what is delivered. */
export function tankShareOf(life: LifeScene, bin: number): Step {
  const { own, burn } = firstScene(life);
  return own.kept(`tank share ${bin}`, () => {
    const name = "share of that size in the tank";
    if (life.facts.given.held === "tank") {
      return inWords("held as it is in the tank, as the file asks", { name, value: 1, unit: "1", kind: "ratio" });
    }
    const { suction: S, path: P } = binPassing(life, bin);
    const season = seasonOf(life, 0);
    const Q_b = inWords(`at the first load of ${season}`, { name: "burn", value: burn, unit: "m3/s", kind: "flow" });
    const { x, z } = own.kept("tank flows", () => tankFlows(own, Q_b));
    return worked(formulas.tankShare, { x, P, z, S }, { name });
  });
}

/** The bins that hold anything. */
export function bins({ facts }: LifeScene, kind: "masses" | "counts"): number[] {
  return Array.from({ length: binCount }, (_, bin) => bin).filter((bin) => (facts.given.delivered[kind][bin] ?? 0) > 0);
}

/** What is delivered of a size. */
export function delivered(life: LifeScene, bin: number, kind: "masses" | "counts"): Step {
  const value = life.facts.given.delivered[kind][bin] ?? 0;
  const size = `${((sizeEdges[bin] ?? 0) * 1e6).toPrecision(3)} µm`;
  const words =
    "the delivered fuel of the file, shared out over sizes straight in log count over log size, as spheres of 2650 kg/m³";
  return kind === "masses"
    ? inWords(words, { name: `solids from ${size}`, value, unit: "kg/m3", kind: "solids" })
    : inWords(words, { name: `particles from ${size}`, value, unit: "1/m3" });
}

/** Solids of a size in the tank. */
export function tankSolids(life: LifeScene, bin: number): Step {
  const c_d = delivered(life, bin, "masses");
  if (life.facts.given.held === "tank") return c_d;
  const { own } = firstScene(life);
  return own.kept(`tank solids ${bin}`, () => {
    const share = tankShareOf(life, bin);
    if (share.origin.by !== "formula") return c_d;
    const put = Object.fromEntries(share.origin.inputs.map(({ letter, steps }) => [letter, steps[0] as Step]));
    return worked(formulas.tankSolids, { c_d, x: put.x as Step, P: put.P as Step, z: put.z as Step, S: put.S as Step });
  });
}
