import { type Step, stepsBefore } from "@thirstline/study/working";

/** A way down from a figure: at each step the place of the next among those before it, and its name. */
export type Trail = readonly { readonly at: number; readonly name: string }[];

/**
 * The steps along a trail, from the figure itself on. Of another system the same way may not lead as far: it is followed
 * by name, and ends where the names do.
 */
export function stepsAlong(root: Step, trail: Trail): readonly Step[] {
  const steps = [root];
  for (const { at, name } of trail) {
    const before = stepsBefore(steps.at(-1) ?? root);
    const next = before[at]?.name === name ? before[at] : before.find((one) => one.name === name);
    if (next === undefined) break;
    steps.push(next);
  }
  return steps;
}
