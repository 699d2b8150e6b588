import type { SystemFilter } from "@thirstline/spec/system";
import { filtersOf } from "../../life/filtersOf.js";
import { filtersWithPlaces } from "../figures/filterAt.js";
import * as soil from "../formulas/soil.js";
import * as formulas from "../formulas/waterInFuel.js";
import { ofPart } from "../parts/PartScene.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { fromFile, inWords, worked } from "../worked.js";
import { stopsOf } from "./dropSteps.js";
import { type Passing, passingOf, tankFlows } from "./passing.js";

const RATIO = { unit: "1", kind: "ratio" } as const;

/** The system at one load of the season, and its share of the running time. */
export interface LoadScene {
  readonly scene: Scene;
  readonly share: Step;
  readonly burn: Step;
}

/** A load of the season. */
export function loadScene(
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

/** Share of the free water a filter keeps at the flow through it. */
export function keptBy(scene: Scene, filter: SystemFilter): Step {
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

/** How fast a filter takes water out at a load. */
export function rateAt(load: LoadScene, filter: SystemFilter, f: Step): Step {
  const Q = stopsOf(load.scene).find((stop) => stop.name === filter.name)?.flow;
  const p = passing(load).reaches.get(filter.name);
  if (!Q || !p) return inWords("nothing flows through it", { name: "water kept in a time", value: 0, unit: "kg/s" });
  return worked(formulas.waterRate, { Q, f, s: tankShare(load), p, E: keptBy(load.scene, filter) });
}

/** Free water that reaches the engine over all loads. */
export function carried(at: readonly LoadScene[], f: Step, value: number): Step {
  return worked(
    formulas.carriedOn,
    { f, x: at.map(({ share }) => share), s: at.map(tankShare), p: at.map((load) => passing(load).path) },
    { value },
  );
}
