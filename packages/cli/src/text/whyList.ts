import type { UnitSystem } from "@thirstline/study";
import type { FigureListed, Step } from "@thirstline/study/working";
import type { Paint } from "../io/paint.js";
import { rule } from "./heading.js";
import { readerText } from "./siText.js";
import { cut, left, right, WIDTH, wrap } from "./wrap.js";

const VALUE = 14;

/** What a list shows of one thing that has figures. */
export interface WhyListed {
  /** what stands before its figures' names; empty where there is no other */
  readonly label: string;
  readonly about: string | null;
  readonly figures: readonly FigureListed[];
}

/** How a list is shown, and how one asks for a figure of it. */
export interface WhyListLook {
  readonly units: UnitSystem;
  readonly paint: Paint;
  /** what precedes a figure's name on the command line */
  readonly command: string;
  /** what follows it */
  readonly options: string;
}

/** Every figure that can be asked for, in groups, with its value. */
export function whyList(title: string, lists: readonly WhyListed[], look: WhyListLook): string[] {
  const { units, paint, command, options } = look;
  const blocks = lists.flatMap(({ label, about, figures }) => [
    ...(label === "" ? [] : ["", paint("strong", cut(about === null ? label : `${label}: ${about}`, WIDTH))]),
    ...(figures.length === 0 ? ["  no figures but those of check and life"] : groupLines(figures, units)),
  ]);
  const how = `Ask for one by its name: ${command} "${exampleOf(lists)}"${options}`;
  const more =
    lists.length > 1
      ? [
          `Where several have a figure, what it is of goes before it; that alone, such as "${lists[0]?.label}", lists all there are of it, those of check and life too.`,
        ]
      : [];
  return [
    paint("strong", cut(title, WIDTH)),
    rule(paint),
    ...wrap(how, "  "),
    ...more.flatMap((line) => wrap(line)),
    ...blocks,
  ];
}

function exampleOf(lists: readonly WhyListed[]): string {
  const one = lists.find(({ figures }) => figures.length > 0);
  const name = one?.figures[0]?.name ?? "vacuum";
  return one === undefined || one.label === "" ? name : `${one.label}: ${name}`;
}

function groupLines(list: readonly FigureListed[], units: UnitSystem): string[] {
  const shown = list.filter((one) => !isSameEnd(one, list));
  const groups = [...new Set(shown.map(({ group }) => group))];
  return groups.flatMap((group) => [
    "",
    group,
    ...shown.filter((one) => one.group === group).map(({ name, step }) => line(name, step, units)),
  ]);
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
