import { type CurveAnswer, type CurveColumn, type CurvePoint, type CurveState, sideWords } from "@thirstline/study";

/** What is drawn of an answer: vacuum at the pump or, with no pump, pressure at the engine. */
export interface Drawn {
  readonly title: string;
  readonly kind: "vacuum" | "pressure";
  readonly columnOf: (state: CurveState) => CurveColumn | null;
  readonly limits: readonly { readonly name: string; readonly value: number }[];
}

/** What of an answer goes into its chart. */
export function drawnOf(answer: CurveAnswer, { vacuumLimits, feedLimit }: CurvePoint): Drawn {
  if (answer.pump === "none") {
    return {
      title: "Pressure at the engine",
      kind: "pressure",
      columnOf: ({ feedPressure }) => feedPressure,
      limits: [{ name: "least needed", value: feedLimit }],
    };
  }
  const { clean, atChange } = vacuumLimits;
  return {
    title: `Vacuum ${sideWords(answer.pump).inlet}`,
    kind: "vacuum",
    columnOf: ({ vacuum }) => vacuum,
    limits: [
      ...(clean === null ? [] : [{ name: "clean", value: clean }]),
      ...(atChange === null ? [] : [{ name: "at change", value: atChange }]),
    ],
  };
}
