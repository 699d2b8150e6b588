import { loadAtRatio } from "@thirstline/core";
import type { Growing, SidePath } from "../../gauge/SidePath.js";
import { MOST } from "../../gauge/shapes.js";
import * as formulas from "../formulas/gauge.js";
import { soilRatio } from "../life/lawSteps.js";
import { type LifeScene, lifeScene } from "../life/lifeFacts.js";
import type { Step } from "../Step.js";
import { sceneOf } from "../scene/Scene.js";
import { inWords, searched, worked } from "../worked.js";
import type { GaugeGiven } from "./GaugeGiven.js";

const MASS = { unit: "kg", kind: "soil" } as const;

/** Resistance over clean of an element when the one that goes first has come to a resistance. */
export function elementRatio({ system }: GaugeGiven, path: SidePath, element: string, lead: Step): Step {
  const name = `resistance over clean of ${element}`;
  const value = path.at(lead.value).get(element) ?? 1;
  const plain = { name, value, unit: "1", kind: "plain" } as const;
  if (element === path.lead)
    return value === lead.value ? { ...lead, name } : inWords("as the fit has it", plain, [lead]);
  const life = path.growing && lifeScene(sceneOf(system, {}));
  const first = path.growing?.find((one) => one.name === path.lead);
  const own = path.growing?.find((one) => one.name === element);
  if (!life || !first || !own) {
    return inWords("life cannot say how they share the soil, so all are taken to grow alike", plain, [lead]);
  }
  const t = worked(formulas.leadTime, { m: soilAt(life, first, lead), a: started(first), q: caught(first) });
  const m = worked(formulas.soilThen, { a: started(own), q: caught(own), t }, { name: `soil on ${element}` });
  const ratio = soilRatio(life, element, own.law, m);
  return ratio.value < MOST ? { ...ratio, name, value } : inWords("more than any gauge tells", plain, [m]);
}

/** Soil on the element that goes first at a resistance: what its law asks for. */
function soilAt(life: LifeScene, { name, law }: Growing, lead: Step): Step {
  const plain = { name: `soil on ${name}`, value: loadAtRatio(law, Math.max(1, lead.value)), ...MASS };
  const left = soilRatio(life, name, law, inWords("as found", plain));
  return searched("the soil at which its law comes to that resistance", plain, [
    { words: "with that soil the law comes to that resistance", left, relation: "=", right: lead },
  ]);
}

function started({ name, soil }: Growing): Step {
  const words = soil === 0 ? "a clean element" : "what makes the resistance that the file states";
  return inWords(words, { name: `soil on ${name} at the start`, value: soil, ...MASS });
}

function caught({ name, rate }: Growing): Step {
  const words = "what life lets it catch with all elements clean, over the seasons and loads of a year of duty";
  return inWords(words, { name: `soil ${name} catches a year`, value: rate, ...MASS });
}
