import type { System } from "@thirstline/spec/system";
import type { QuantityKind } from "../../say/units.js";
import { chanceOf } from "../../spread/chanceOf.js";
import { SETS } from "../../spread/drawsOf.js";
import { quantilesOf } from "../../spread/quantilesOf.js";
import * as formulas from "../formulas/spreads.js";
import type { PartPath, Step } from "../Step.js";
import { filePlace } from "../scene/filePlace.js";
import { inWords, worked } from "../worked.js";

/** Many draws of one figure, and what they were drawn with. */
export interface Drawn {
  readonly system: System;
  readonly draws: Float64Array;
  readonly seed: number;
  /** which of the file's spreads are drawn, by their place; all when left out */
  readonly only?: (place: number) => boolean;
  /** what varies besides */
  readonly also?: readonly string[];
}

const SHARES = { low: "10 %", middle: "50 %", high: "90 %" } as const;
const RULE =
  "Halton's sequence turned by a seeded shift, in ten sets; each spread is drawn evenly between its ends, or evenly over " +
  "its logarithm where one end is more than 1.5 times the other; sorted, the value";

/** What so many per cent of draws stay below. */
export function quantileStep(
  drawn: Drawn,
  which: keyof typeof SHARES,
  shown: { readonly name: string; readonly unit: string; readonly kind: QuantityKind },
): Step {
  const { draws, seed } = drawn;
  const known = draws.filter((draw) => !Number.isNaN(draw));
  const words = `${known.length} draws with seed ${seed}: ${RULE} that ${SHARES[which]} of them stay below`;
  return {
    ...shown,
    value: quantilesOf(draws)[which],
    origin: { by: "draws", words, varying: varying(drawn), from: [] },
  };
}

/** The chance of something, over the sets of draws. */
export function chanceStep(drawn: Drawn, name: string, is: (draw: number) => boolean): Step {
  const c = setChances(drawn, name, is);
  const { chance: value } = chanceOf(drawn.draws, is);
  return worked(formulas.chance, { c, n: counted(c.length) }, { name, value });
}

/** The standard error of that chance. */
export function chanceErrorStep(drawn: Drawn, name: string, is: (draw: number) => boolean): Step {
  const c = setChances(drawn, name, is);
  const { chanceError: value } = chanceOf(drawn.draws, is);
  if (c.length < 2) return inWords("one set of draws alone shows no error", { name, value, unit: "1", kind: "ratio" });
  const m = chanceStep(drawn, "chance over all sets", is);
  return worked(formulas.chanceError, { c, n: counted(c.length), m }, { name: `standard error of ${name}`, value });
}

/** How many draws came to a figure. */
export function countStep({ draws, seed }: Drawn, name: string): Step {
  const value = draws.filter((draw) => !Number.isNaN(draw)).length;
  const words = `counted: the draws of seed ${seed} that made a system that can be`;
  return inWords(words, { name, value, unit: "1", kind: "plain" });
}

function counted(value: number): Step {
  return inWords("counted", { name: "how many sets", value, unit: "1", kind: "plain" });
}

function setChances(drawn: Drawn, name: string, is: (draw: number) => boolean): Step[] {
  const { draws, seed } = drawn;
  return Array.from({ length: SETS }, (_, set): Step[] => {
    const own = draws.filter((draw, at) => at % SETS === set && !Number.isNaN(draw));
    if (own.length === 0) return [];
    const words = `${own.length} draws of set ${set + 1} with seed ${seed}, counted`;
    const value = own.filter(is).length / own.length;
    const origin = { by: "draws", words, varying: varying(drawn), from: [] } as const;
    return [{ name: `${name} in set ${set + 1}`, value, unit: "1", kind: "ratio", origin }];
  }).flat();
}

/** What varies, by its place in the file. */
function varying({ system, only = () => true, also = [] }: Drawn): string[] {
  const spreads = (system.spreads ?? []).filter(({ group }, at) => (group ?? at) === at && only(at));
  return [
    ...spreads.map(({ path, low, high }) => `${placeOf(system, path)}, ${shortly(low)} to ${shortly(high)} in SI`),
    ...also,
  ];
}

function shortly(value: number): number {
  return Number(value.toPrecision(4));
}

/** A figure's place: its part as the file writes it, then its own name. */
function placeOf(system: System, path: PartPath): string {
  const words = (step: string | number) =>
    typeof step === "number" ? `[${step}]` : step.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  const named = path.findLastIndex((step) => typeof step === "number");
  const place = named < 0 ? "" : filePlace(system, path.slice(0, named + 1));
  const rest = path.slice(named + 1).map(words);
  return [...(place === "" ? [] : [place]), ...rest].join(".").replace("medium.points", "flow test");
}
