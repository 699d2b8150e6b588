import { type CheckAnswer, type CheckPoint, type PartRow, sideWords } from "@thirstline/study";

/** One side of the pump: its parts, and what it comes to at its end. */
export interface Side {
  readonly title: string;
  readonly rows: readonly PartRow[];
  readonly kind: "vacuum" | "pressure";
  /** Pa */
  readonly end: { readonly name: string; readonly value: number } | null;
}

/** Both sides of the pump, or with no pump the only one. */
export function sidesOf({ pump }: CheckAnswer, point: CheckPoint): Side[] {
  const words = sideWords(pump);
  const vacuum = point.vacuum.middle;
  const drawn = pump !== "none" && vacuum >= 0;
  const end = { name: `= ${drawn ? "vacuum" : "pressure"} ${words.inlet}`, value: drawn ? vacuum : -vacuum };
  return [
    { title: words.suction, rows: point.suction, kind: pump === "none" ? "pressure" : "vacuum", end },
    { title: words.delivery, rows: point.delivery, kind: "pressure", end: null },
  ];
}
