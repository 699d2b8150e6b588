import type { System } from "@thirstline/spec/system";
import { placesOf } from "../../choose/places.js";
import type { Remedy } from "../../choose/RemedyAnswer.js";
import type { QuantityKind } from "../../say/units.js";
import * as formulas from "../formulas/choosing.js";
import type { Step } from "../Step.js";
import { filePlace } from "../scene/filePlace.js";
import { fromFile, fromSource, inWords, type Plain, worked } from "../worked.js";

/** A figure that a change itself carries. */
export interface RemedyPart {
  readonly key: "from" | "to" | "by" | "restriction";
  readonly step: () => Step;
}

const PRACTICE = "common practice, no source";
const HOSES = "bores of hose as sold: FAA AC 43.13-1B (1998), table 9-3, MIL-H-8788 hose";

/** The figures that a change carries, each with where it comes from. */
export function remedyParts(system: System, remedy: Remedy): RemedyPart[] {
  switch (remedy.kind) {
    case "wider bore": {
      const from = () => stated(system, remedy.parts[0] ?? "", "bore", { value: remedy.from, kind: "bore" });
      const to = { name: "bore tried", value: remedy.to, unit: "m", kind: "bore" } as const;
      return [
        { key: "from", step: from },
        {
          key: "to",
          step: () =>
            remedy.listed
              ? fromSource(`the next of the ${HOSES}`, to)
              : worked(formulas.widerBore, { x: chosen("how much wider", 1.25), D: from() }, { value: remedy.to }),
        },
      ];
    }
    case "shorter run": {
      const L = () => stated(system, remedy.part, "length", { value: remedy.from, kind: "length" });
      const x = chosen("share of it that stays", 0.75);
      return [
        { key: "from", step: L },
        { key: "to", step: () => worked(formulas.shorterRun, { x, L: L() }, { value: remedy.to }) },
      ];
    }
    case "fewer fittings": {
      const from = () => stated(system, remedy.part, "count", { value: remedy.from, kind: "plain" });
      const to = { name: "fittings left", value: remedy.to, unit: "1", kind: "plain" } as const;
      return [
        { key: "from", step: from },
        { key: "to", step: () => inWords("half of them, rounded down; of one, none", to, [from()]) },
      ];
    }
    case "warmer fuel":
    case "cooler fuel":
      return [step("by", { name: "change of temperature tried", value: remedy.by, unit: "K" })];
    case "lower pump":
    case "higher tank":
      return [step("by", { name: "change of height tried", value: remedy.by, unit: "m", kind: "length" })];
    case "clean element": {
      const value = { value: remedy.restriction, kind: "plain" } as const;
      return [{ key: "restriction", step: () => stated(system, remedy.part, "restriction", value) }];
    }
    case "fuller tank":
      return fullerTank(system, remedy);
    default:
      return [];
  }
}

function fullerTank({ tanks, ...rest }: System, { tank, from, to }: Extract<Remedy, { kind: "fuller tank" }>) {
  const at = tanks.findIndex(({ name }) => name === tank);
  const place = filePlace({ ...rest, tanks }, ["tanks", at]);
  const depth = (key: string, name: string, value: number) =>
    fromFile(`${place}.${key}`, { name, value, unit: "m", kind: "length" });
  const h = () => depth("full depth", "depth of the full tank", tanks[at]?.fullDepth ?? Number.NaN);
  return [
    { key: "from", step: () => depth("low depth", "fuel over the pick-up when low", from) },
    { key: "to", step: () => worked(formulas.fullerTank, { h: h() }, { value: to }) },
  ] satisfies RemedyPart[];
}

/** What is tried where nothing says how much can be changed. */
function step(key: RemedyPart["key"], plain: Plain): RemedyPart {
  return { key, step: () => fromSource(PRACTICE, plain) };
}

function chosen(name: string, value: number): Step {
  return fromSource(PRACTICE, { name, value, unit: "1", kind: "plain" });
}

/** A figure of a part as its file states it. */
function stated(
  system: System,
  part: string,
  key: string,
  { value, kind }: { readonly value: number; readonly kind: QuantityKind },
): Step {
  const found = placesOf(system).find((one) => one.part.name === part);
  const place = found ? filePlace(system, found.path) : part;
  return fromFile(`${place}.${key}`, { name: key, value, unit: kind === "plain" ? "1" : "m", kind });
}
