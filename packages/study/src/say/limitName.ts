import type { LimitName } from "@thirstline/core";

const names: Readonly<Record<LimitName, string>> = {
  "vacuum clean": "the vacuum limit with clean elements",
  "vacuum at change": "the vacuum limit at change",
  "feed pressure": "the feed pressure",
  vapour: "the fuel's vapour pressure",
  "pump capacity": "the pump's own capacity",
};

/** A limit as it is called in a sentence. */
export function limitName(limit: LimitName, pump: "none" | "fixed" | "curve" | "pulse"): string {
  return limit === "feed pressure" && pump === "none" ? "the head of the tank" : names[limit];
}
