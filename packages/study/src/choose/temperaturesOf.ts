import type { System } from "@thirstline/spec/system";

/** Every fuel temperature a system is run at, by its seasons and its own, K, coldest first. */
export function temperaturesOf(system: System): number[] {
  const all = [system.temperature, ...(system.duty?.seasons ?? []).map(({ temperature }) => temperature)];
  return [...new Set(all)].sort((one, other) => one - other);
}
