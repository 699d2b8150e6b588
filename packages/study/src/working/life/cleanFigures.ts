import { binCount, CatchBalance, sizeEdges } from "@thirstline/core";
import { cleanlinessOf } from "../../life/cleanlinessOf.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { filtersWithPlaces } from "../figures/filterAt.js";
import * as formulas from "../formulas/soil.js";
import type { Step } from "../Step.js";
import { demandHere } from "../supply/demand.js";
import { inWords, worked } from "../worked.js";
import { stopsOf } from "./dropSteps.js";
import { binEfficiency } from "./efficiency.js";
import type { LifeScene } from "./lifeFacts.js";
import { type Passing, passingOf, tankFlows } from "./passing.js";
import { seasonOf } from "./yearSteps.js";

const GROUP = "How clean the fuel is";
const CODED = { at4: 4e-6, at6: 6e-6, at14: 14e-6 } as const;

/** How clean the fuel is from delivery to the engine, in the first season at its first load. */
export function cleanFigures(life: LifeScene): FigureMaker[] {
  const { system, given } = life.facts;
  const rows = life.scene.kept("cleanliness", () => cleanlinessOf(system, given).cleanliness);
  return [
    ...rows.flatMap(({ place, solids, counts }, at): FigureMaker[] => {
      const name = `solids ${place}`;
      return [
        { group: GROUP, name, make: () => ({ ...solidsAt(life, at, rows.length), name, value: solids }) },
        ...(Object.keys(CODED) as (keyof typeof CODED)[]).map((size, which): FigureMaker => {
          const title = `particles from ${CODED[size] * 1e6} µm ${place}`;
          const value = (counts[which] ?? 0) * 1e6;
          return {
            group: GROUP,
            name: title,
            make: () => ({ ...countAt(life, at, rows.length, CODED[size]), name: title, value }),
          };
        }),
      ];
    }),
    ...given.elements.flatMap(({ name, efficiency }): FigureMaker[] => {
      if (!efficiency) return [];
      const title = `soil caught in a time by ${name}, clean`;
      return [{ group: GROUP, name: title, make: () => rateOf(life, name, title) }];
    }),
  ];
}

/** The first season's scene at its first load. */
function firstScene({ scene, facts }: LifeScene) {
  const phase = facts.given.phases[0];
  const load = phase?.loads[0];
  const season = facts.duty.seasons.find((one) => one.phase.fuel === phase?.fuel);
  const demand = load ? load.demand.burn + load.demand.return : 0;
  const temperature = season?.temperature ?? facts.built.temperature;
  return { own: scene.at({ temperature, at: demand, demand: null, elements: "now" }), burn: load?.demand.burn ?? 0 };
}

function binPassing(life: LifeScene, bin: number): Passing {
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

function tankShareOf(life: LifeScene, bin: number): Step {
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
function bins({ facts }: LifeScene, kind: "masses" | "counts"): number[] {
  return Array.from({ length: binCount }, (_, bin) => bin).filter((bin) => (facts.given.delivered[kind][bin] ?? 0) > 0);
}

function delivered(life: LifeScene, bin: number, kind: "masses" | "counts"): Step {
  const value = life.facts.given.delivered[kind][bin] ?? 0;
  const size = `${((sizeEdges[bin] ?? 0) * 1e6).toPrecision(3)} µm`;
  const words =
    "the delivered fuel of the file, shared out over sizes straight in log count over log size, as spheres of 2650 kg/m³";
  return kind === "masses"
    ? inWords(words, { name: `solids from ${size}`, value, unit: "kg/m3", kind: "solids" })
    : inWords(words, { name: `particles from ${size}`, value, unit: "1/m3" });
}

function tankSolids(life: LifeScene, bin: number): Step {
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

/** Share left at a place: 0 as delivered, 1 in the tank, last at the end, before it at the pump. */
function leftAt(life: LifeScene, bin: number, at: number, rows: number): Step | null {
  if (at < 2) return null;
  const { suction, path } = binPassing(life, bin);
  return at === rows - 1 ? path : suction;
}

function solidsAt(life: LifeScene, at: number, rows: number): Step {
  const own = bins(life, "masses");
  if (at === 0) return worked(formulas.solidsSum, { c: own.map((bin) => delivered(life, bin, "masses")) });
  const c = own.map((bin) => tankSolids(life, bin));
  if (at === 1) return worked(formulas.solidsSum, { c });
  return worked(formulas.solidsLeft, { c, p: own.flatMap((bin) => leftAt(life, bin, at, rows) ?? []) });
}

function countAt(life: LifeScene, at: number, rows: number, from: number): Step {
  const own = bins(life, "counts").filter((bin) => (sizeEdges[bin] ?? 0) >= from);
  const whole = inWords("all of it", { name: "share", value: 1, unit: "1", kind: "ratio" });
  if (own.length === 0)
    return inWords("none of that size are delivered", { name: "particles", value: 0, unit: "1/m3" });
  return worked(formulas.countLeft, {
    n: own.map((bin) => delivered(life, bin, "counts")),
    s: own.map((bin) => (at === 0 ? whole : tankShareOf(life, bin))),
    p: own.map((bin) => leftAt(life, bin, at, rows) ?? whole),
  });
}

/** How fast a filter catches soil in the first season at its first load. */
function rateOf(life: LifeScene, name: string, title: string): Step | null {
  const { own, burn } = firstScene(life);
  const { given } = life.facts;
  const Q = stopsOf(own).find((stop) => stop.name === name)?.flow;
  const places = bins(life, "masses");
  const element = given.elements.find((one) => one.name === name);
  if (!Q || !element?.efficiency) return null;
  const known = given.elements.flatMap((one) => (one.efficiency ? [[one.name, one.efficiency] as const] : []));
  const balance = new CatchBalance(given.delivered, new Map(known), given.held);
  balance.update(own.model, { burn, return: demandHere(own).value - burn });
  const place = filtersWithPlaces(own).find(({ part }) => part.name === name);
  if (!place) return null;
  return worked(
    formulas.catchRate,
    {
      Q,
      c: places.map((bin) => tankSolids(life, bin)),
      p: places.map((bin) => binPassing(life, bin).reaches.get(name) as Step),
      E: places.map((bin) =>
        own.kept(`efficiency ${name} ${bin}`, () => binEfficiency(own, place, bin, element.efficiency?.[bin] ?? 0)),
      ),
    },
    { name: title, value: balance.rate(name) },
  );
}
