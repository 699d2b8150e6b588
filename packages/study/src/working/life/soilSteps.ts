import { loadAtRatio } from "@thirstline/core";
import { filterAt, filtersWithPlaces } from "../figures/filterAt.js";
import * as formulas from "../formulas/caught.js";
import { ratioProduct } from "../formulas/loading.js";
import { ofPart } from "../parts/PartScene.js";
import type { Check, Step } from "../Step.js";
import { inWords, searched, worked } from "../worked.js";
import { ofDelivery, ratesOf, weighedMoments } from "./caught.js";
import { soilRatio } from "./lawSteps.js";
import type { LifeScene } from "./lifeFacts.js";
import { waterRatio } from "./swellingSteps.js";

const MASS = { unit: "kg", kind: "soil" } as const;
/** What Simpson's rule over cut seasons may miss. */
const WITHIN = 1e-6;

/** Soil on an element at the start: what makes the resistance its file states. */
export function soilAtStart(life: LifeScene, at: number): Step {
  const element = life.facts.given.elements[at];
  const name = `soil at start on ${element?.name}`;
  const value = life.found.moments[0]?.soil[at] ?? 0;
  const plain = { name, value, ...MASS };
  if (!element?.law || value === 0) return inWords("clean, or nothing is known of how it plugs", plain);
  const place = filtersWithPlaces(life.scene).find(({ part }) => part.name === element.name);
  const found = place && filterAt(life.scene, place.path);
  if (!place || !found) return inWords("as the file states", plain);
  const restriction = place.part.restriction ?? 1;
  const right = ofPart({ scene: life.scene, path: place.path }, "restriction", {
    name: "resistance over the clean one, as stated",
    value: restriction,
    unit: "1",
    kind: "plain",
  });
  const left = soilRatio(
    life,
    element.name,
    element.law,
    inWords("as found", { ...plain, value: loadAtRatio(element.law, restriction) }),
  );
  return searched("the soil at which its law gives the resistance stated", plain, [
    { words: "with that soil the law gives the resistance stated", left, relation: "=", right },
  ]);
}

/** Soil on an element, or water in it, at the end: the start's and what it caught, summed over time. */
export function caught(life: LifeScene, at: number, what: "soil" | "water"): Step {
  const { facts, found, last } = life;
  const element = facts.given.elements[at];
  const title = what === "soil" ? `soil on ${element?.name}` : `water in ${element?.name}`;
  const value = (what === "soil" ? last.soil[at] : last.water[at]) ?? 0;
  const plain = { name: title, value, ...MASS };
  const wet = facts.given.elements.some(({ swells }) => swells);
  if (what === "water" && !wet) return inWords("no element swells with water, so none is followed", plain);
  if (last.time === 0) return inWords("at the very start", plain);
  const start = (what === "soil" ? found.moments[0]?.soil[at] : found.moments[0]?.water[at]) ?? 0;
  const rates = ratesOf(facts.given, what);
  const weighed = life.scene.kept("weighed moments", () => weighedMoments(facts.given, last.time));
  const all = life.scene.kept(`rates of ${what}`, () => weighed.map(({ phase, moment }) => rates(phase, moment)));
  const w = weighed.map(({ weight, moment }) =>
    inWords(`at ${Math.round(moment.time / 3600)} h`, {
      name: "weight of the moment",
      value: weight,
      unit: "s",
      kind: "running time",
    }),
  );
  const g = all.map((own) =>
    inWords("worked out anew from the balance of tank and path, with the elements as they are then", {
      name: "caught in a time then",
      value: own.get(element?.name ?? "") ?? 0,
      unit: "kg/s",
    }),
  );
  const m_0 =
    what === "soil" ? soilAtStart(life, at) : inWords("dry", { name: "water at the start", value: start, ...MASS });
  const pulse = what === "soil" ? ofDelivery(facts.given, last.time) : null;
  const delivery =
    pulse &&
    inWords("the balance of tank and path, with the elements as they are when it is taken", {
      name: "caught of the dirty delivery",
      value: pulse.get(element?.name ?? "") ?? 0,
      ...MASS,
    });
  const check: Check = {
    words: "what it caught is how fast it catches, summed over time apart from the following",
    left: worked(formulas.caughtSince, { m: inWords("as followed", plain), m_0 }),
    relation: "=",
    right:
      delivery === null
        ? worked(formulas.caughtOverTime, { w, g })
        : worked(formulas.caughtWithDelivery, { w, g, p: delivery }),
    within: WITHIN,
  };
  return searched("followed through the seasons by Dormand and Prince's method, fifth order", plain, [check]);
}

/** Resistance of an element over its clean one at the end, by its soil and its water. */
export function restriction(life: LifeScene, at: number): Step {
  const element = life.facts.given.elements[at];
  const name = `resistance over clean of ${element?.name}`;
  const value = life.last.restriction[at] ?? 1;
  const plain = { name, value, unit: "1", kind: "plain" } as const;
  if (value >= 1e9) return inWords("plugged: beyond a thousand million it passes nothing worth a word", plain);
  const r_s = element?.law ? soilRatio(life, element.name, element.law, caught(life, at, "soil")) : null;
  const r_w = element?.swells ? waterRatio(life, element.name, element.swells, caught(life, at, "water")) : null;
  if (r_s && r_w) return worked(ratioProduct, { r_s, r_w }, { name, value });
  const only = r_s ?? r_w;
  return only ? { ...only, name, value } : inWords("nothing is known of how it plugs, so it is taken not to", plain);
}
