import type { Arrangement, SizeAnswer } from "./sizing/SizeAnswer.js";

/**
 * What is arranged where a working's figures are of one arrangement of a search.
 *
 * @param of as workings name it: "arrangement 0", "failed 2", "nearest"
 * @returns null for the search itself
 */
export function sizeNamed(
  { arrangements, failed, nearest }: SizeAnswer,
  of: string,
): Pick<Arrangement, "stages" | "bore"> | null {
  const [kind, at] = of.split(" ");
  if (kind === "arrangement") return arrangements[Number(at)] ?? null;
  if (kind === "failed") return failed[Number(at)]?.example ?? null;
  return kind === "nearest" ? nearest : null;
}
