import type { LifeEnd } from "@thirstline/core";
import type { Check, Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { searched } from "../worked.js";
import { endSides } from "./endSides.js";
import { filledScene, type LifeScene } from "./lifeFacts.js";

/** Both sides of what ended a life may differ by no more to count as equal. */
const ALIKE = 1e-9;

/** The moment the first limit is met; null where none is within the time looked ahead. */
export function endOfLife(life: LifeScene, name = "end of life"): Step | null {
  const { found } = life;
  const { end } = found;
  if (!end) return null;
  const plain = { name, value: end.time, unit: "s", kind: "running time" } as const;
  const words =
    "the soil on every element is followed by adding up what it catches, flows splitting anew as elements fill, to the " +
    "moment the first limit is met at the worst duty point, which is closed in on";
  const check = endCheck(filledScene({ ...life, place: end.point }, end).at({ passage: "early" }), end.by, end.time);
  return searched(words, plain, check ? [check] : []);
}

/** What ends a life, on both sides: the limit at the demand, or the element's own drop. */
function endCheck(scene: Scene, by: LifeEnd, time: number): Check | null {
  const sides = endSides(scene, by);
  const size = scene.supply.ambientPressure;
  return (
    sides && equalOr(sides, sides.holds, { time, scale: sides.left.unit === "Pa" ? size : Math.abs(sides.right.value) })
  );
}

/** Equal where the search closed in on it; else the limit is broken from the start, or stepped over. */
function equalOr(
  { left, right, words }: { readonly left: Step; readonly right: Step; readonly words: string },
  holds: "<=" | ">=",
  { time, scale }: { readonly time: number; readonly scale: number },
): Check {
  const alike = Math.abs(left.value - right.value) <= ALIKE * scale;
  if (alike) return { words: `at that moment ${words}`, left, relation: "=", right, scale };
  const broken = holds === "<=" ? ">=" : "<=";
  if (time === 0) return { words: "it is broken from the start", left, relation: broken, right };
  const over = holds === "<=" ? left.value > right.value : left.value < right.value;
  if (over)
    return { words: "the dirty delivery taken at that moment puts it past at once", left, relation: broken, right };
  return { words: "at that moment the limit only just holds", left, relation: holds, right };
}
