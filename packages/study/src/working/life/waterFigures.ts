import { typicalHydrocarbons, waterSolubility } from "@thirstline/core";
import type { SystemFilter } from "@thirstline/spec/system";
import { filtersOf } from "../../life/filtersOf.js";
import { waterOf } from "../../life/waterOf.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { filtersWithPlaces } from "../figures/filterAt.js";
import * as soil from "../formulas/soil.js";
import * as formulas from "../formulas/waterInFuel.js";
import { fuelDensity } from "../fuel/density.js";
import { oneKelvin, temperature } from "../fuel/temperature.js";
import { ofPart } from "../parts/PartScene.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { fromFile, fromSource, inWords, worked } from "../worked.js";
import { stopsOf } from "./dropSteps.js";
import { swelling } from "./lawSteps.js";
import type { LifeScene } from "./lifeFacts.js";
import { type Passing, passingOf, tankFlows } from "./passing.js";

const GROUP = "Water in the coldest season";
const RATIO = { unit: "1", kind: "ratio" } as const;

/** Water in the coldest season, with the elements as they are. */
export function waterFigures(life: LifeScene): FigureMaker[] {
  const { system, duty, given } = life.facts;
  const answer = life.scene.kept("water", () => waterOf(system, duty, given));
  const coldest = [...duty.seasons].sort((one, two) => one.temperature - two.temperature)[0];
  if (!answer || !coldest) return [];
  const own = life.scene.at({ temperature: coldest.temperature, demand: null, elements: "now" });
  const figure = (name: string, make: () => Step | null): FigureMaker => ({
    group: GROUP,
    name,
    make: () => {
      const step = make();
      return step && { ...step, name };
    },
  });
  const { loads } = coldest.phase;
  const at = loads.map(({ share, demand }, place) => loadScene(own, place, share, demand));
  const f = () => ({ ...free(own), value: answer.free });
  const rate = (filter: SystemFilter, value: number): Step => {
    const x = at.map(({ share }) => share);
    return worked(soil.overLoads, { x, g: at.map((load) => rateAt(load, filter, f())) }, { value });
  };
  return [
    figure("coldest season", () => seasonTemperature(life, coldest.name, coldest.temperature)),
    figure("water in the fuel", () => total(own)),
    figure("water dissolved", () =>
      answer.dissolved === null ? null : { ...(dissolved(own) as Step), value: answer.dissolved },
    ),
    figure("free water", f),
    figure("free water carried on", () => carried(at, f(), answer.carriedOn)),
    ...answer.stages.flatMap((stage): FigureMaker[] => {
      const filter = filtersOf(system).find(({ name }) => name === stage.element);
      if (!filter) return [];
      const most = at.reduce((full, one) => (one.scene.demand > full.scene.demand ? one : full));
      const g = () => rate(filter, stage.rate);
      return [
        figure(`share of free water kept by ${filter.name}`, () => ({
          ...keptBy(most.scene, filter),
          value: stage.efficiency,
        })),
        figure(`water kept in a time by ${filter.name}`, g),
        figure(`draining of ${filter.name}`, () =>
          stage.drainEvery === null ? null : drainEvery(own, filter, g(), stage.drainEvery),
        ),
        figure(`shutting of ${filter.name} by water`, () =>
          stage.shutAfter === null ? null : shutAfter(life, filter, g(), stage.shutAfter),
        ),
      ];
    }),
  ];
}

interface LoadScene {
  readonly scene: Scene;
  readonly share: Step;
  readonly burn: Step;
}

function loadScene(
  own: Scene,
  place: number,
  share: number,
  demand: { readonly burn: number; readonly return: number },
): LoadScene {
  const stated = own.system.duty?.loads !== undefined;
  const plain = { name: "share of the running time", value: share, ...RATIO };
  return {
    scene: own.at({ at: demand.burn + demand.return }),
    share: stated ? fromFile(`duty.loads[${place}].share`, plain) : inWords("full load all the time", plain),
    burn: inWords("burn at that load", { name: "burn", value: demand.burn, unit: "m3/s", kind: "flow" }),
  };
}

function seasonTemperature({ facts }: LifeScene, name: string, value: number): Step {
  const place = facts.system.duty?.seasons?.findIndex((season) => season.name === name) ?? -1;
  const path = place < 0 ? "fuel.temperature" : `duty.seasons[${place}].temperature`;
  return fromFile(path, { name: "temperature", value, unit: "K", kind: "temperature" });
}

function total({ system }: Scene): Step {
  const value = system.deliveredFuel?.water ?? 0;
  return fromFile("delivered fuel.water", {
    name: "water in the delivered fuel",
    value,
    unit: "kg/m3",
    kind: "solids",
  });
}

/** Water the fuel dissolves; null where nobody knows how much this fuel does. */
function dissolved(own: Scene): Step | null {
  const { fuel } = own.system;
  const kind = fuel.kind === "measured" ? fuel.like : fuel.kind;
  const wet = kind === "biodiesel" || ("ethanol" in fuel && fuel.ethanol > 0);
  if (wet || own.temperature < 233 || own.temperature > 373) return null;
  const make = typicalHydrocarbons[kind === "petrol" || kind === "premix" ? "petrol" : "light diesel"];
  const HEYWOOD = "J. B. Heywood, Internal Combustion Engine Fundamentals (1988), table D.4; from memory";
  const X = worked(
    formulas.solubility,
    {
      H: fromSource(HEYWOOD, {
        name: "mass ratio of hydrogen to carbon",
        value: make.hydrogenToCarbon,
        unit: "1",
        kind: "plain",
      }),
      T_0: oneKelvin,
      T: temperature(own),
      M_w: fromSource("R. R. Hibbard and R. L. Schalla, NACA RM E52D24 (1952)", {
        name: "molar mass of water",
        value: 0.018015,
        unit: "kg/mol",
      }),
      M: fromSource(HEYWOOD, { name: "molar mass of the fuel", value: make.molarMass, unit: "kg/mol" }),
    },
    { value: waterSolubility({ ...make, temperature: own.temperature }) },
  );
  return worked(formulas.dissolvedWater, { W: total(own), X, rho: fuelDensity(own) });
}

function free(own: Scene): Step {
  const w = dissolved(own);
  if (w === null) return { ...total(own), name: "free water: how much this fuel dissolves is not known, so all of it" };
  return worked(formulas.freeWater, { W: total(own), w });
}

/** Share of the free water a filter keeps at the flow through it. */
function keptBy(scene: Scene, filter: SystemFilter): Step {
  const place = filtersWithPlaces(scene).find(({ part }) => part.name === filter.name);
  const name = "share of the free water it keeps";
  const { separation } = filter;
  const Q = stopsOf(scene).find((stop) => stop.name === filter.name)?.flow;
  if (!separation || !place) {
    const words = filter.absorbs
      ? "an absorber of which no share is stated keeps all, the safe side"
      : "none is stated";
    return inWords(words, { name, value: filter.absorbs ? 1 : 0, ...RATIO });
  }
  if (!Q || Q.value <= 0) return inWords("nothing flows through it", { name, value: 0, ...RATIO });
  const of = (key: string, plain: Parameters<typeof ofPart>[2]) =>
    ofPart({ scene, path: place.path }, `water.${key}`, plain);
  return worked(formulas.separation, {
    E_0: of("efficiency", { name: "share it keeps as stated", value: separation.efficiency, ...RATIO }),
    Q_0: of("at", { name: "flow that was stated at", value: separation.flow, unit: "m3/s", kind: "flow" }),
    Q,
  });
}

function passing({ scene }: LoadScene): Passing {
  return scene.kept("passing water", () => {
    const filters = filtersOf(scene.system);
    return passingOf(scene, (name) => {
      const filter = filters.find((one) => one.name === name);
      return filter && (filter.separation || filter.absorbs) ? keptBy(scene, filter) : null;
    });
  });
}

function tankShare(load: LoadScene): Step {
  const name = "share of the free water in the tank";
  if (load.scene.system.deliveredFuel?.held === "tank") {
    return inWords("held as it is in the tank, as the file asks", { name, value: 1, ...RATIO });
  }
  const { suction: S, path: P } = passing(load);
  return worked(soil.tankShare, { ...tankFlows(load.scene, load.burn), P, S }, { name });
}

function rateAt(load: LoadScene, filter: SystemFilter, f: Step): Step {
  const Q = stopsOf(load.scene).find((stop) => stop.name === filter.name)?.flow;
  const p = passing(load).reaches.get(filter.name);
  if (!Q || !p) return inWords("nothing flows through it", { name: "water kept in a time", value: 0, unit: "kg/s" });
  return worked(formulas.waterRate, { Q, f, s: tankShare(load), p, E: keptBy(load.scene, filter) });
}

function carried(at: readonly LoadScene[], f: Step, value: number): Step {
  return worked(
    formulas.carriedOn,
    { f, x: at.map(({ share }) => share), s: at.map(tankShare), p: at.map((load) => passing(load).path) },
    { value },
  );
}

function drainEvery(own: Scene, filter: SystemFilter, g: Step, value: number): Step | null {
  const place = filtersWithPlaces(own).find(({ part }) => part.name === filter.name);
  if (!place || filter.bowl === undefined) return null;
  const v = ofPart({ scene: own, path: place.path }, "bowl", {
    name: "bowl up to where it must be drained",
    value: filter.bowl,
    unit: "m3",
    kind: "volume",
  });
  const rho_w = fromSource("water at 21 °C", { name: "density of water", value: 998, unit: "kg/m3", kind: "density" });
  return worked(formulas.drainEvery, { v, rho_w, g }, { value });
}

function shutAfter(life: LifeScene, filter: SystemFilter, g: Step, value: number): Step | null {
  const law = life.facts.given.elements.find(({ name }) => name === filter.name)?.swells;
  return law ? worked(formulas.shutAfter, { K: swelling(life, filter.name, law), g }, { value }) : null;
}
