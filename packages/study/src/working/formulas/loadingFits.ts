import { formula } from "../Formula.js";

const hermia = "J. Hermia, Trans. IChemE 60 (1982) 183";
const r = ["r", "resistance over the clean one", "1"] as const;
const fitted = {
  symbols: { r: ["resistance over the clean one in the test", "1"], m: ["soil in the test", "kg"] },
  result: ["K", "constant of the loading law", "1/kg"],
  holds: "the law passes the tested point",
  accuracy: "that of the test",
  source: hermia,
} as const;

/** The constant with which each law passes a tested point. */
export const fits = {
  cake: formula({ id: "fit-cake", name: "Constant of the cake law from a test", text: "(r - 1) / m", ...fitted }),
  intermediate: formula({
    id: "fit-intermediate",
    name: "Constant of intermediate blocking from a test",
    text: "log(r) / m",
    ...fitted,
  }),
  standard: formula({
    id: "fit-standard",
    name: "Constant of standard blocking from a test",
    text: "2 * (1 - 1 / sqrt(r)) / m",
    ...fitted,
  }),
  complete: formula({
    id: "fit-complete",
    name: "Constant of complete blocking from a test",
    text: "(r - 1) / r / m",
    ...fitted,
  }),
} as const;

/** Resistance ratio at the end of a capacity test. */
export const testRatio = formula({
  id: "capacity-test-ratio",
  name: "Resistance over clean at the end of a capacity test",
  text: "1 + p / (mu * R * Q)",
  symbols: {
    p: ["rise of the drop in the test", "Pa"],
    mu: ["dynamic viscosity of the test fluid", "Pa s"],
    R: ["resistance of the clean medium", "1/m3"],
    Q: ["flow in the test", "m3/s"],
  },
  result: ["r", "resistance over the clean one in the test", "1"],
  holds: "soil multiplies the linear term of the medium only",
  accuracy: "with a one-point flow test the body's share counts as medium, and the true ratio is higher",
  source: "tests as in ISO 16889:2022 and ISO 4020:2001",
});

/** Handbook capacity of a medium. */
export const handbookCapacity = formula({
  id: "handbook-capacity",
  name: "Soil a medium takes, by handbook",
  text: "A * sqrt(a * b)",
  symbols: { A: ["area of the medium", "m2"], a: ["least, by handbook", "kg/m2"], b: ["most, by handbook", "kg/m2"] },
  result: ["m", "soil at that rise", "kg"],
  holds: "where nobody tested the element",
  accuracy: "a plausible range, no more: both ends are followed too",
  source: "filter handbooks, from memory",
});

/** Resistance ratio that goes with it. */
export const handbookRatio = formula({
  id: "handbook-ratio",
  name: "Resistance over clean at the handbook's rise",
  text: "1 + p / (mu * R * u * A)",
  symbols: {
    p: ["rise at which handbooks take it", "Pa"],
    mu: ["dynamic viscosity taken", "Pa s"],
    R: ["resistance of the clean medium", "1/m3"],
    u: ["face velocity taken", "m/s"],
    A: ["area of the medium", "m2"],
  },
  result: ["r", "resistance over the clean one", "1"],
  holds: "where nobody tested the element",
  accuracy: "a plausible range, no more",
  source: "common practice, no source",
});

/** Soil and water narrow the same pores. */
export const ratioProduct = formula({
  id: "loading-soil-and-water",
  name: "Resistance over clean with soil and water",
  text: "r_s * r_w",
  symbols: { r_s: ["ratio by soil", "1"], r_w: ["ratio by water", "1"] },
  result: r,
  holds: "both narrow the same pores, the safe side",
  accuracy: "not known",
  source: "common practice, no source",
});
