import type { System } from "@thirstline/spec/system";
import type { PartPath } from "../Step.js";

/**
 * A place of the system as its file writes it: ["suction", 3, "branches", 0, 0] is "suction[3].bank[0].filter". A branch of
 * one part is written without a list, as most files do.
 */
export function filePlace(system: System, path: PartPath): string {
  let text = "";
  let node: unknown = system;
  let alone = false;
  for (const step of path) {
    const inner: unknown = (node as Record<string | number, unknown>)[step];
    if (typeof step === "string") {
      if (step === "tanks" && system.tanks.length === 1) text = "tank";
      else if (step !== "branches") text += text === "" ? step : `.${step}`;
    } else if (Array.isArray(inner)) {
      text += `[${step}]`;
      alone = inner.length === 1;
      node = inner;
      continue;
    } else if (isPart(inner)) text += `${alone ? "" : `[${step}]`}.${inner.part}`;
    else if (text !== "tank") text += `[${step}]`;
    alone = false;
    node = inner;
  }
  return text;
}

function isPart(value: unknown): value is { readonly part: string } {
  return typeof value === "object" && value !== null && "part" in value;
}
