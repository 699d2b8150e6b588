import type { LifeAnswer } from "../life/LifeAnswer.js";
import { namesWords } from "./namesWords.js";
import { quantity } from "./quantity.js";
import { say, type Words } from "./words.js";

/** Whether what reaches the injection pump is clean enough, and which stage does the work; null where nothing was caught. */
export function protectionWords({ protection, cleanliness, elements }: LifeAnswer): Words | null {
  const end = cleanliness.at(-1);
  if (!end) return null;
  const work = workWords(elements);
  if (!protection) return say`${end.code} comes out ${end.place}; what it asks for is not stated.${work}`;
  const verdict = protection.kept ? "which is clean enough" : "which is too dirty";
  return say`${end.code} comes out ${end.place}, where ${protection.code} is asked for, ${verdict}.${work}`;
}

/** Which stage does the work; elements that catch alike stand side by side, and count together. */
function workWords(elements: LifeAnswer["elements"]): Words {
  const caught = elements.map(({ name, soil, soilAtStart }) => ({ name, mass: soil - soilAtStart }));
  const all = caught.reduce((sum, { mass }) => sum + mass, 0);
  const stages = caught.map(({ mass }) => caught.filter((other) => Math.abs(other.mass - mass) <= 1e-6 * mass));
  const sum = (stage: typeof caught) => stage.reduce((total, { mass }) => total + mass, 0);
  const most = stages.reduce<typeof caught>((best, one) => (sum(one) > sum(best) ? one : best), []);
  if (all <= 0 || caught.length < 2) return say``;
  const names = namesWords(most.map(({ name }) => name));
  return say` ${names} ${most.length > 1 ? "do" : "does"} most of the work, and ${most.length > 1 ? "catch" : "catches"} ${quantity(sum(most) / all, "ratio", "metric")} of the soil.`;
}
