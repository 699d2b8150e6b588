import type { System } from "@thirstline/spec/system";

/** What burns: petrol flashes at any workshop's temperature, the rest does when it is hot or a mist. */
export function burns({ fuel }: System): "diesel" | "petrol" {
  const kind = fuel.kind === "measured" ? fuel.like : fuel.kind;
  return kind === "petrol" || kind === "premix" ? "petrol" : "diesel";
}

/** What stands at the path's end. */
export function endWord(system: System): string {
  return burns(system) === "petrol" || system.pump.kind === "none" ? "the engine" : "the injection pump";
}
