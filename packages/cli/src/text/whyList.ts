import type { UnitSystem } from "@thirstline/study";
import type { FigureListed, Step } from "@thirstline/study/working";
import type { Answered } from "../commands/Answered.js";
import type { Paint } from "../io/paint.js";
import { rule } from "./heading.js";
import { readerText } from "./siText.js";
import { cut, left, right, WIDTH, wrap } from "./wrap.js";

const VALUE = 14;

/** Every figure that can be asked for, in groups, with its value. */
export function whyList(
  { system, file }: Answered<unknown>,
  list: readonly FigureListed[],
  units: UnitSystem,
  paint: Paint,
): string[] {
  const shown = list.filter((one) => !isSameEnd(one, list));
  const groups = [...new Set(shown.map(({ group }) => group))];
  const blocks = groups.flatMap((group) => [
    "",
    group,
    ...shown.filter((one) => one.group === group).map(({ name, step }) => line(name, step, units)),
  ]);
  const how = `Ask for one by its name: thirstline why ${file} "${shown[0]?.name ?? "vacuum"}"`;
  return [paint("strong", cut(system.name, WIDTH)), rule(paint), ...wrap(how, "  "), ...blocks];
}

/** An end of a band that is the figure itself says nothing new. */
function isSameEnd({ name, step }: FigureListed, list: readonly FigureListed[]): boolean {
  const [, whole] = /^(.*), (?:low|high) end$/.exec(name) ?? [];
  return whole !== undefined && list.find((one) => one.name === whole)?.step?.value === step?.value;
}

function line(name: string, step: Step | null, units: UnitSystem): string {
  const value = step === null ? "on asking" : readerText(step, units);
  return `  ${left(name, WIDTH - VALUE - 2)}${right(value, VALUE)}`.trimEnd();
}
