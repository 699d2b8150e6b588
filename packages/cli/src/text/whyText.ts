import type { UnitSystem } from "@thirstline/study";
import { proofOf, type Step, stepsBefore, type Working } from "@thirstline/study/working";
import type { Paint } from "../io/paint.js";
import { rule } from "./heading.js";
import { siText } from "./siText.js";
import { stepText } from "./stepText.js";
import { cut, WIDTH, wrap } from "./wrap.js";

/** How a working is shown. */
export interface WhyLook {
  readonly units: UnitSystem;
  /** how many steps down */
  readonly depth: number;
  readonly paint: Paint;
}

/** A working as lines for people: its formula, with values put in, its result, what each letter is, and where from. */
export function whyText({ figure, system, step }: Working, { units, depth, paint }: WhyLook): string[] {
  const steps = unfolded(step, depth).flatMap((one, at) => [
    ...(at === 0 ? [] : ["", paint("strong", cut(one.name, WIDTH))]),
    ...stepText(one, units),
  ]);
  return [paint("strong", cut(`${figure}: ${system}`, WIDTH)), rule(paint), ...steps, "", ...wrap(proofWords(step))];
}

/** The step and, below it, those it rests on that were worked out themselves, so many steps down; each once. */
function unfolded(step: Step, depth: number): Step[] {
  const found: Step[] = [step];
  const told = new Set([keyOf(step)]);
  let level: readonly Step[] = [step];
  for (let down = 1; down < depth; down++) {
    const below = level.flatMap(stepsBefore).filter((one) => {
      const fresh = ["formula", "search", "draws"].includes(one.origin.by) && !told.has(keyOf(one));
      told.add(keyOf(one));
      return fresh;
    });
    found.push(...below);
    level = below;
  }
  return found;
}

function keyOf({ name, value }: Step): string {
  return `${name} ${value}`;
}

function proofWords(step: Step): string {
  const { formulas, checks, largest, misses } = proofOf({ step });
  const all = `${formulas} ${formulas === 1 ? "formula" : "formulas"}${checks === 0 ? "" : ` and ${checks} ${checks === 1 ? "check of a search" : "checks of searches"}`}`;
  if (formulas + checks === 0) return "Nothing here is worked out by a formula.";
  if (misses.length === 0) {
    const within = largest < 1e-9 ? "1e-9" : siText(largest, "1");
    return `Worked out anew down to the file's own values, units and all: ${all}, each within ${within}.`;
  }
  const names = misses.map(({ name }) => name).join(", ");
  return `Worked out anew, these did not come out, which is a fault of this program: ${names}.`;
}
