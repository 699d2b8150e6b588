import type { System } from "@thirstline/spec/system";
import { fitElement } from "../../choose/fitElement.js";
import { filterPlaces } from "../../choose/places.js";
import type { SwapGiven, SwapOptions } from "../../choose/swap.js";
import { temperaturesOf } from "../../choose/temperaturesOf.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { mostKept } from "../formulas/most.js";
import { asked, fromSource, worked } from "../worked.js";
import type { Choice, Variant } from "./Choice.js";
import { fittingFigures } from "./fittingFigures.js";
import { sideFigures } from "./sideFigures.js";

const GROUP = "What is asked";

/**
 * What `swap` compares: the system as it is, "now", and with the other element fitted, "changed". Their figures are those
 * of `check` and `life`, and what a year costs.
 *
 * @param given and options as `swap` was asked with; the draws and their seed too
 * @example
 * choiceWorking(swapChoice(heron, { at: "fine filter", with: element }), { of: "changed", figure: "vacuum", asked: {} })
 */
export function swapChoice(system: System, given: SwapGiven, options: SwapOptions = {}): Choice {
  const at = typeof given.at === "string" ? [given.at] : [...new Set(given.at)];
  const temperatures = [...(options.temperatures ?? temperaturesOf(system))].sort((one, two) => one - two);
  const { draws = 200, seed = 1 } = options;
  const changed = fitElement(system, at, given.with);
  const common = { at, temperatures, options, asked: { draws, seed } };
  const now = { ...common, system, element: options.fitted ?? null };
  const then = { ...common, system: changed, element: given.with };
  const change = `the element catalogue's "${given.with.name}"`;
  const variants: [string, Variant][] = [
    ["now", { system, change: null, asked: common.asked, own: sideFigures(now) }],
    [
      "changed",
      {
        system: changed,
        change,
        asked: common.asked,
        own: [...sideFigures(then), ...fittingFigures(then), ...askedFigures(system, at, given, options)],
      },
    ],
  ];
  return { question: "swap", file: system, variants: new Map(variants) };
}

/** What was asked, and what the file and the catalogue state beside each other. */
function askedFigures(system: System, at: readonly string[], given: SwapGiven, { rating }: SwapOptions): FigureMaker[] {
  const filters = filterPlaces(system).filter(({ part }) => at.includes(part.name));
  const kept = given.with.filter.separation?.efficiency;
  const own = filters.flatMap(({ part }) => part.separation?.efficiency ?? []);
  const share = { unit: "1", kind: "ratio" } as const;
  return [
    {
      group: GROUP,
      name: "water kept by what is fitted",
      make: () => {
        const e = own.map((value) =>
          fromSource("the system file", { name: "share of free water kept", value, ...share }),
        );
        return e.length === 0 ? null : worked(mostKept, { e });
      },
    },
    {
      group: GROUP,
      name: "water kept by the other element",
      make: () =>
        kept === undefined
          ? null
          : fromSource(`the element catalogue, "${given.with.name}"`, {
              name: "share of free water kept",
              value: kept,
              ...share,
            }),
    },
    {
      group: GROUP,
      name: "beta asked",
      make: () =>
        rating ? asked("rating", { name: "beta asked", value: rating.beta, unit: "1", kind: "plain" }) : null,
    },
    {
      group: GROUP,
      name: "size asked",
      make: () =>
        rating ? asked("rating", { name: "size asked", value: rating.size, unit: "m", kind: "particle size" }) : null,
    },
  ];
}
