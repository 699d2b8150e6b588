import { formula } from "../Formula.js";

/** Soil caught: the sum over time of how fast. */
export const caughtOverTime = formula({
  id: "caught-over-time",
  name: "Soil caught: how fast, summed over time by Simpson's rule",
  text: "sum(w * g)",
  symbols: { w: ["weight of the moment", "s"], g: ["soil or water caught in a time then", "kg/s"] },
  result: ["m", "caught since the start", "kg"],
  holds: "rates that change smoothly between the moments",
  accuracy: "some 1e-6 of the sum",
  source: "Simpson's rule, as in NIST Digital Library of Mathematical Functions, 3.5; from memory",
});

/** The same with what one dirty delivery brings at once. */
export const caughtWithDelivery = formula({
  id: "caught-with-delivery",
  name: "Soil caught: how fast, summed over time, and what a dirty delivery brings at once",
  text: "sum(w * g) + p",
  symbols: {
    w: ["weight of the moment", "s"],
    g: ["soil or water caught in a time then", "kg/s"],
    p: ["caught of the dirty delivery", "kg"],
  },
  result: ["m", "caught since the start", "kg"],
  holds: "rates that change smoothly between the moments",
  accuracy: "some 1e-6 of the sum",
  source: "Simpson's rule, as in NIST Digital Library of Mathematical Functions, 3.5; from memory",
});

/** What was caught since the start. */
export const caughtSince = formula({
  id: "caught-since-start",
  name: "Caught since the start",
  text: "m - m_0",
  symbols: { m: ["soil or water then", "kg"], m_0: ["soil or water at the start", "kg"] },
  result: ["m", "caught since the start", "kg"],
  holds: "always",
  accuracy: "exact",
  source: "definition",
});

/** Share of a rise. */
export const riseShare = formula({
  id: "rise-share",
  name: "Share of the rise since clean",
  text: "max(0 * d, d - d_0) / sum(p)",
  symbols: {
    d: ["drop then", "Pa"],
    d_0: ["drop when clean", "Pa"],
    p: ["rise of each element", "Pa"],
  },
  result: ["s", "share of all the rise", "1", "ratio"],
  holds: "always",
  accuracy: "exact",
  source: "definition",
});

/** Share of several elements that go together. */
export const sharesTogether = formula({
  id: "rise-shares-together",
  name: "Share of the rise of several elements together",
  text: "sum(s)",
  symbols: { s: ["share of the rise of each of them", "1", "ratio"] },
  result: ["s", "share of all the rise", "1", "ratio"],
  holds: "always",
  accuracy: "exact",
  source: "definition",
});

/** Rise of one element. */
export const riseOf = formula({
  id: "rise-of-element",
  name: "Rise of an element since clean",
  text: "max(0 * d, d - d_0)",
  symbols: { d: ["drop then", "Pa"], d_0: ["drop when clean", "Pa"] },
  result: ["p", "rise", "Pa"],
  holds: "always",
  accuracy: "exact",
  source: "definition",
});

/** A branch's share of a flow. */
export const flowShare = formula({
  id: "flow-share",
  name: "Share of a bank's flow",
  text: "q / sum(Q)",
  symbols: { q: ["flow through the element", "m3/s"], Q: ["flow through each element of the bank", "m3/s"] },
  result: ["x", "share of the flow", "1", "ratio"],
  holds: "always",
  accuracy: "that of the split",
  source: "definition",
});
