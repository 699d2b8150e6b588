import { formula } from "../Formula.js";

const exact = { accuracy: "exact", source: "definition" } as const;

/** The most vacuum of several temperatures. */
export const mostVacuum = formula({
  id: "most-vacuum",
  name: "The most vacuum over several temperatures",
  text: "max(V)",
  symbols: { V: ["vacuum at a temperature", "Pa", "vacuum"] },
  result: ["V", "most vacuum", "Pa", "vacuum"],
  holds: "always",
  ...exact,
});

/** The largest share of free water an element fitted keeps. */
export const mostKept = formula({
  id: "most-kept",
  name: "The largest share of free water kept at the places",
  text: "max(e)",
  symbols: { e: ["share kept by an element", "1", "ratio"] },
  result: ["e", "largest share kept", "1", "ratio"],
  holds: "always",
  ...exact,
});
