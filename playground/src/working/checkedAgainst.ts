import type { Formula } from "@thirstline/study/working";
import accuracy from "./accuracy.json";

/** What was measured of one table, as `npm run accuracy -- --page` writes it. */
interface Measured {
  readonly name: string;
  readonly kind: string;
  readonly source: string;
  readonly figures: number;
  /** as printed; null JSON for a missing answer never passes the tests */
  readonly largest: string;
  /** what the error is counted in */
  readonly as: string;
}

const measured: ReadonlyMap<string, Measured> = new Map(
  (accuracy as readonly Measured[]).map((one) => [one.name, one]),
);

/** A sentence for every table of figures that checks a formula. */
export function checkedAgainst({ checkedBy }: Pick<Formula, "checkedBy">): readonly string[] {
  return checkedBy.flatMap((name) => {
    const found = measured.get(name);
    if (found === undefined) return [];
    const { kind, source, figures, largest, as } = found;
    const count = `${figures} ${figures === 1 ? "figure" : "figures"}`;
    return `Against ${source} (${kind}): ${count}, largest error ${largest} ${inWords(as)}.`;
  });
}

function inWords(as: string): string {
  return as === "half steps" ? "half steps of the last printed digit, where 1 is agreement as printed" : as;
}
