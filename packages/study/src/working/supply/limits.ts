import { publishedVacuumLimits } from "@thirstline/core";
import { limitsOf } from "../../check/limitsOf.js";
import { guidanceLimit } from "../formulas/limits.js";
import type { Step } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { fromFile, fromSource, inWords, worked } from "../worked.js";

const GUIDANCE = "US Army TM 5-3895-346-14 and TM 5-3810-300-24&P-3 item 11";

/** A vacuum limit that is judged by: the file's, or published guidance; null where there is none. */
export function vacuumLimit(scene: Scene, which: "clean" | "at change"): Step | null {
  const { built } = scene;
  const { limits } = limitsOf(built);
  const value = which === "clean" ? limits.vacuumClean : limits.vacuumAtChange;
  if (value === undefined) return null;
  const name = which === "clean" ? "clean limit" : "limit at change";
  const plain = { name, value, unit: "Pa", kind: "vacuum" } as const;
  const own = which === "clean" ? built.limits.vacuumClean : built.limits.vacuumAtChange;
  if (own === value) return fromFile(`limits.vacuum ${which}`, plain);
  const published = which === "clean" ? publishedVacuumLimits.clean : publishedVacuumLimits.atChange;
  if (published === value) {
    const inches = which === "clean" ? 6 : 12;
    return worked(
      guidanceLimit,
      {
        n: fromSource(GUIDANCE, { name: "limit in inches of mercury", value: inches, unit: "1", kind: "plain" }),
        p_1: fromSource("ISO 31-3; NIST SP 811", {
          name: "one conventional inch of mercury",
          value: 3386.388640341,
          unit: "Pa",
          kind: "pressure",
        }),
      },
      { name },
    );
  }
  const other = which === "clean" ? "at change" : "clean";
  return inWords("the other limit of the file, which serves for both", plain, [
    fromFile(`limits.vacuum ${other}`, { ...plain, name: `limit ${other}` }),
  ]);
}

/** Least feed pressure. */
export function feedLimit(scene: Scene): Step {
  const stated = limitsOf(scene.built).limits.feedPressure;
  const plain = { name: "least feed pressure", value: stated ?? 0, unit: "Pa", kind: "pressure" } as const;
  return stated === undefined
    ? inWords("none is stated: an engine that would have to suck is not fed", plain)
    : fromFile("limits.feed pressure", plain);
}
