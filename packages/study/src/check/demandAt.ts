import type { FuelState } from "@thirstline/core";
import type { Built } from "@thirstline/spec/system";
import type { CheckPoint } from "./CheckAnswer.js";

/** What the engine takes under a fuel state; `asked`, m3/s, replaces the file's total, burn and return in proportion. */
export function demandAt(built: Built, fuel: FuelState, asked: number | null): CheckPoint["demand"] {
  const { burn, return: back } = built.demand(fuel);
  const factor = asked === null ? 1 : asked / (burn + back);
  return { burn: burn * factor, return: back * factor, total: (burn + back) * factor };
}
