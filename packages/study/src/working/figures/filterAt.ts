import type { Filter } from "@thirstline/core";
import type { SystemFilter, SystemPart } from "@thirstline/spec/system";
import { partsOf } from "../../check/partsOf.js";
import type { PartScene } from "../parts/PartScene.js";
import type { PartPath } from "../Step.js";
import type { Scene } from "../scene/Scene.js";
import { inWords } from "../worked.js";

/** A filter of the path: as the system states it, and as core has it. */
export interface FilterAt {
  readonly given: PartScene<SystemFilter>;
  readonly core: Filter;
}

/** The filter at a place; null where another part stands. */
export function filterAt(scene: Scene, path: PartPath): FilterAt | null {
  let node: unknown = scene.system;
  for (const step of path) node = (node as Record<string | number, unknown>)[step];
  const part = node as SystemPart;
  if (part.part !== "filter") return null;
  const core = partsOf(scene.supply).find((one): one is Filter => one.kind === "filter" && one.name === part.name);
  const flow = inWords("not asked here", { name: "flow", value: 0, unit: "m3/s", kind: "flow" });
  return core ? { given: { scene, part, path, flow }, core } : null;
}

/** Every filter of a system with its place, in the order the fuel meets them. */
export function filtersWithPlaces(scene: Scene): readonly { readonly part: SystemFilter; readonly path: PartPath }[] {
  const inside = (parts: readonly SystemPart[], place: PartPath): { part: SystemFilter; path: PartPath }[] =>
    parts.flatMap((part, at) => {
      const path = [...place, at];
      if (part.part === "bank")
        return part.branches.flatMap((branch, own) => inside(branch, [...path, "branches", own]));
      return part.part === "filter" ? [{ part, path }] : [];
    });
  const { tanks, suction, delivery } = scene.system;
  return [
    ...tanks.flatMap((tank, at) => inside(tank.path, ["tanks", at, "path"])),
    ...inside(suction, ["suction"]),
    ...inside(delivery ?? [], ["delivery"]),
  ];
}
