import { CatchBalance, sizeEdges } from "@thirstline/core";
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
import { binPassing, bins, delivered, firstScene, tankShareOf, tankSolids } from "./tankSteps.js";

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
