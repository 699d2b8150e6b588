import type { System } from "@thirstline/spec/system";
import { placesOf } from "../../choose/places.js";
import type { PartPath, Step } from "../Step.js";
import { filePlace } from "../scene/filePlace.js";
import { mapSteps } from "./mapSteps.js";

/** A changed system beside the one its file states, with what is changed in words. */
export interface Changed {
  readonly file: System;
  readonly system: System;
  readonly change: string;
}

/**
 * The working of a changed system with its figures' places told rightly: what is as in the file at the file's own place,
 * and what is changed by what changed it.
 */
export function retold(step: Step, { file, system, change }: Changed): Step {
  const known = new Map<string, PartPath>([
    ...file.tanks.map((tank, at): [string, PartPath] => [bare(tank), ["tanks", at]]),
    ...placesOf(file).map(({ part, path }): [string, PartPath] => [JSON.stringify(part), path]),
  ]);
  const places = new Map<string, PartPath | null>();
  const toldOf = (path: PartPath): PartPath | null => {
    const key = JSON.stringify(path);
    const node = nodeAt(system, path);
    const isTank = path[0] === "tanks" && path.length === 2;
    const own = places.get(key) ?? known.get(isTank ? bare(node as System["tanks"][number]) : JSON.stringify(node));
    places.set(key, own ?? null);
    return own ?? null;
  };
  return mapSteps(step, (one) => {
    if (one.part === undefined) return one;
    const own = toldOf(one.part);
    const { part, ...rest } = one;
    const moved = own === null ? rest : { ...rest, part: own };
    if (one.origin.by !== "file") return moved;
    const place = filePlace(system, part);
    const key = one.origin.path.slice(place.length);
    if (own !== null) return { ...moved, origin: { by: "file", path: `${filePlace(file, own)}${key}` } };
    const source = `${change}${key === "" ? "" : `: ${key.replace(/^\./, "")}`}`;
    return { ...moved, origin: { by: "source", source } };
  });
}

function nodeAt(system: System, path: PartPath): unknown {
  let node: unknown = system;
  for (const step of path) node = (node as Record<string | number, unknown> | undefined)?.[step];
  return node;
}

/** A tank without the parts behind it. */
function bare({ path: _, ...tank }: System["tanks"][number]): string {
  return JSON.stringify(tank);
}
