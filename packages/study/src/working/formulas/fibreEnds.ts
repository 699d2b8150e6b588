import { formula } from "../Formula.js";

const accuracy = "real mats scatter widely; the ten laws together make the band";
const ends = {
  symbols: { R: ["resistance by each law", "1/m3"] },
  result: ["R", "resistance of the clean medium", "1/m3"],
  holds: "an estimate from published laws",
  accuracy,
  source: "definition",
} as const;

/** Lowest of the laws. */
export const lowerResistance = formula({
  id: "fibres-lowest",
  name: "Lowest resistance by the published laws",
  text: "min(R)",
  ...ends,
});

/** Highest of the laws. */
export const higherResistance = formula({
  id: "fibres-highest",
  name: "Highest resistance by the published laws",
  text: "max(R)",
  ...ends,
});
