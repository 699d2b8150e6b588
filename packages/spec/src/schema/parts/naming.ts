import type { PartData } from "./PartData.js";
import { type Paths, placedParts } from "./placedParts.js";

/** Gives each part its name: its own, or one made of its kind. */
export type Naming = (kind: string, own: string | undefined) => string;

/**
 * Names for parts that have none: "line", or "line 1", "line 2" in the order they are met where there are several of a
 * kind. A name that stands in the file is never given a second time.
 */
export function naming(data: Paths): Naming {
  const taken = new Set<string>();
  const total = new Map<string, number>();
  for (const { part } of placedParts(data)) {
    const [kind = "part"] = Object.keys(part);
    const content = part[kind as keyof PartData];
    const own = content !== undefined && !Array.isArray(content) ? content.name : undefined;
    if (own === undefined) total.set(kind, (total.get(kind) ?? 0) + 1);
    else taken.add(own);
  }

  const next = new Map<string, number>();
  return (kind, own) => {
    if (own !== undefined) return own;
    if (total.get(kind) === 1 && !taken.has(kind)) return kind;
    let number = next.get(kind) ?? 1;
    while (taken.has(`${kind} ${number}`)) number += 1;
    next.set(kind, number + 1);
    return `${kind} ${number}`;
  };
}
