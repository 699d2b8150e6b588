import type { SizeEffort } from "../../choose/sizing/SizeAnswer.js";

/** What a search for arrangements had to do, in words. */
export const effortWords: Readonly<Record<keyof SizeEffort, string>> = {
  spared: "arrangements ruled out with others",
  bySums: "arrangements judged by sums of drops",
  byModel: "arrangements judged by the whole model",
  orders: "orders of elements whose catch was reckoned",
  lives: "lives followed to the end",
};
