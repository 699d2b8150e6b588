import type { Asked } from "../Asked.js";
import type { Leaf } from "../leaves/Leaf.js";
import { type FigureListed, listed } from "../listed.js";
import type { Step, Working } from "../Step.js";
import { figuresOf, isFigure, workingOf } from "../workingOf.js";
import type { Choice, Variant } from "./Choice.js";
import { retold } from "./retold.js";

/**
 * How a figure of a question that compares systems was reached.
 *
 * @param choice from `swapChoice`, `sizeChoice` or `remedyChoice`
 * @param leaf from `leafAt`, or a figure of `choiceFigures` with the name of what it belongs to
 * @returns null for what is no figure, or one without a value here
 * @example
 * choiceWorking(choice, { of: "changed", figure: "vacuum", asked: {} })?.step.value // Pa
 */
export function choiceWorking(choice: Choice, { of = "now", figure, asked }: Leaf): Working | null {
  const variant = choice.variants.get(of);
  if (!variant) return null;
  const own = variant.own.find(({ name }) => name === figure);
  const step = own ? own.make() : (workingOf(variant.system, figure, { ...variant.asked, ...asked })?.step ?? null);
  if (step === null || !Number.isFinite(step.value)) return null;
  return { figure, system: choice.file.name, step: told(choice, variant, step) };
}

/** Every figure there is of one of the systems compared; the question's own first. */
export function choiceFigures(choice: Choice, of: string, asked: Asked = {}): FigureListed[] {
  const variant = choice.variants.get(of);
  if (!variant) return [];
  // Where the question has a figure of a name, that is the one it means.
  const named = new Set(variant.own.map(({ name }) => name));
  const rest = figuresOf(variant.system, { ...variant.asked, ...asked }).filter(({ name }) => !named.has(name));
  const all = [...listed(variant.own), ...rest];
  return all.map((one) => ({ ...one, step: one.step && told(choice, variant, one.step) }));
}

/** Whether a name is a figure of one of the systems compared at all. */
export function isChoiceFigure(choice: Choice, { of = "now", figure, asked }: Leaf): boolean {
  const variant = choice.variants.get(of);
  if (!variant) return false;
  return (
    variant.own.some(({ name }) => name === figure) || isFigure(variant.system, figure, { ...variant.asked, ...asked })
  );
}

function told({ file }: Choice, { system, change }: Variant, step: Step): Step {
  return change === null ? step : retold(step, { file, system, change });
}
