import type { SystemFilter } from "@thirstline/spec/system";
import { filtersOf } from "../../life/filtersOf.js";
import { waterOf } from "../../life/waterOf.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { figuresIn } from "../figures/figuresIn.js";
import { filtersWithPlaces } from "../figures/filterAt.js";
import * as soil from "../formulas/soil.js";
import * as formulas from "../formulas/waterInFuel.js";
import { ofPart } from "../parts/PartScene.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { fromFile, fromSource, worked } from "../worked.js";
import { dissolved, free, total } from "./freeWaterSteps.js";
import type { LifeScene } from "./lifeFacts.js";
import { swelling } from "./swellingSteps.js";
import { carried, keptBy, loadScene, rateAt } from "./waterKept.js";

const GROUP = "Water in the coldest season";

/** Water in the coldest season, with the elements as they are. */
export function waterFigures(life: LifeScene): FigureMaker[] {
  const { system, duty, given } = life.facts;
  const answer = life.scene.kept("water", () => waterOf(system, duty, given));
  const coldest = [...duty.seasons].sort((one, two) => one.temperature - two.temperature)[0];
  if (!answer || !coldest) return [];
  const own = life.scene.at({ temperature: coldest.temperature, demand: null, elements: "now" });
  const figure = figuresIn(GROUP);
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

function seasonTemperature({ facts }: LifeScene, name: string, value: number): Step {
  const place = facts.system.duty?.seasons?.findIndex((season) => season.name === name) ?? -1;
  const path = place < 0 ? "fuel.temperature" : `duty.seasons[${place}].temperature`;
  return fromFile(path, { name: "temperature", value, unit: "K", kind: "temperature" });
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
