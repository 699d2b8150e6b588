import type { Stop } from "./compile.js";
import { boreOf } from "./profile.js";

/** Bore in which the fuel leaves a path, m: that of the last line or fitting outside banks; null where none is stated. */
export function lastBore(stops: readonly Stop[]): number | null {
  return stops.reduce<number | null>((bore, stop) => (stop.kind === "part" ? (boreOf(stop.part) ?? bore) : bore), null);
}
