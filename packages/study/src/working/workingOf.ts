import type { System } from "@thirstline/spec/system";
import type { Asked } from "./Asked.js";
import { figureMakers, lifeMakers } from "./figures/figureMakers.js";
import { type FigureListed, listed } from "./listed.js";
import type { Working } from "./Step.js";

/**
 * Every figure of a system that can show how it was reached, in groups.
 *
 * @param system from a system file
 * @param asked temperature, K, demand, m3/s, and draws, as the answers were asked with
 * @throws InputError when something asked is out of range
 */
export function figuresOf(system: System, asked: Asked = {}): FigureListed[] {
  return listed([...figureMakers(system, asked), ...lifeMakers(system, asked)]);
}

/**
 * How a figure was reached: its formula, what was put in, and where each of those comes from, down to the file's own
 * values, published tables and searches with what proves them.
 *
 * @param system from a system file
 * @param figure a name from `figuresOf`
 * @param asked as there
 * @returns null for a name that is no figure of this system, or a figure that has no value here
 * @example
 * workingOf(system, "vacuum")?.step.value // Pa
 */
export function workingOf(system: System, figure: string, asked: Asked = {}): Working | null {
  const named = (makers: ReturnType<typeof figureMakers>) => makers.find(({ name }) => name === figure);
  // A life takes long to follow; most figures need none.
  const maker = named(figureMakers(system, asked)) ?? named(lifeMakers(system, asked));
  const step = maker?.make() ?? null;
  return step && Number.isFinite(step.value) ? { figure, system: system.name, step } : null;
}

/** Whether a name is a figure of a system at all, be it one without a value here, such as a limit the file does not state. */
export function isFigure(system: System, figure: string, asked: Asked = {}): boolean {
  const has = (makers: ReturnType<typeof figureMakers>) => makers.some(({ name }) => name === figure);
  return has(figureMakers(system, asked)) || has(lifeMakers(system, asked));
}
