import type { RemedyAnswer, RemedyResult } from "./RemedyAnswer.js";

/**
 * The result of an answer that a working's figures are of.
 *
 * @param of as workings name it: "single 0", "pairs 2"
 * @returns null for the machine as it is
 */
export function remedyNamed({ single, pairs }: RemedyAnswer, of: string): RemedyResult | null {
  const [list, at] = of.split(" ");
  const results = list === "single" ? single : list === "pairs" ? pairs : [];
  return results[Number(at)] ?? null;
}
