import { formula, type ShortSymbol } from "../Formula.js";

const D: ShortSymbol = ["seconds in a day", "s/d"];
const straight = { accuracy: "that of use being even", source: "common practice, no source" } as const;
const exact = { accuracy: "exact", source: "definition" } as const;

/** What is reckoned from a meter, of running time or of distance alike. */
function ofMeter(meter: "hours" | "distance") {
  const unit = meter === "hours" ? "s" : "m";
  const total = (meaning: string): ShortSymbol => [meaning, unit, meter === "hours" ? "running time" : "distance"];
  const result = (letter: string, meaning: string) => [letter, ...total(meaning)] as [string, string, string];
  const perDay = meter === "hours" ? "hours a day" : "distance a day";
  const rate: ShortSymbol = ["rate of use", `${unit}/s`, perDay];
  const name = (words: string) => (meter === "hours" ? words : `${words}, by distance`);
  const id = (words: string) => `${words}-${meter}`;
  return {
    gain: formula({
      id: id("meter-gain"),
      name: name("What a meter gained between two rows of the log"),
      text: "b - a",
      symbols: { a: total("shown by the row before"), b: total("shown by the row") },
      result: result("g", "gain between two rows"),
      holds: "one meter, not changed between the rows",
      ...exact,
    }),
    rate: formula({
      id: id("rate-of-use"),
      name: name("Rate of use between rows of the log"),
      text: "sum(g) / (sum(n) * D)",
      symbols: { g: total("gain between two rows"), n: ["days between them", "d"], D },
      result: ["r", "rate of use", `${unit}/s`, perDay],
      holds: "two weeks of the log or more, of its last year; what a new meter missed is left out",
      ...straight,
    }),
    slowest: formula({
      id: id("slowest-use"),
      name: name("Slowest use of the log"),
      text: "min(r)",
      symbols: { r: ["rate of use over each stretch of 28 days or more", `${unit}/s`] },
      result: ["r", "slowest rate of use", `${unit}/s`, perDay],
      holds: "two stretches or more",
      ...exact,
    }),
    fastest: formula({
      id: id("fastest-use"),
      name: name("Fastest use of the log"),
      text: "max(r)",
      symbols: { r: ["rate of use over each stretch of 28 days or more", `${unit}/s`] },
      result: ["r", "fastest rate of use", `${unit}/s`, perDay],
      holds: "two stretches or more",
      ...exact,
    }),
    duty: formula({
      id: id("rate-by-duty"),
      name: name("Rate of use by the duty"),
      text: "Y / a",
      symbols: { Y: total("gained in a year of duty"), a: ["calendar year of 365.25 days", "s"] },
      result: ["r", "rate of use", `${unit}/s`, perDay],
      holds: "where the log tells no rate",
      ...straight,
    }),
    onward: formula({
      id: id("total-onward"),
      name: name("Total of a meter before or after the rows of the log"),
      text: "M + r * D * n",
      symbols: { M: total("total at the nearest row"), r: rate, D, n: ["days from that row", "d"] },
      result: result("T", "total on a day"),
      holds: "the use stays as it was",
      ...straight,
    }),
    between: formula({
      id: id("total-between"),
      name: name("Total of a meter between two rows of the log"),
      text: "M + (N - M) * n / w",
      symbols: {
        M: total("total at the row before"),
        N: total("total at the row after"),
        n: ["days from the row before", "d"],
        w: ["days between the rows", "d"],
      },
      result: result("T", "total on a day"),
      holds: "even use between the rows",
      ...straight,
    }),
    renewed: formula({
      id: id("total-renewed"),
      name: name("Total with a new meter"),
      text: "M + v - w",
      symbols: { M: total("total when it was put in"), v: total("shown"), w: total("shown when it was put in") },
      result: result("T", "total on the first meter's scale"),
      holds: "until the next new meter",
      ...exact,
    }),
    since: formula({
      id: id("since-change"),
      name: name("Gained since a change"),
      text: "T - C",
      symbols: { T: total("total on the day"), C: total("total at the change") },
      result: result("t", "gained since the change"),
      holds: "always",
      ...exact,
    }),
    target: formula({
      id: id("due-total"),
      name: name("Total at which an element is due"),
      text: "C + A",
      symbols: { C: total("total at the change"), A: total("allowed from the change on") },
      result: result("T", "total when due"),
      holds: "always",
      ...exact,
    }),
    reached: formula({
      id: id("day-onward"),
      name: name("Days from today until a total is reached"),
      text: "l + (T - M) / (r * D)",
      symbols: {
        l: ["days from today to the nearest row", "d"],
        T: total("total when due"),
        M: total("total at that row"),
        r: rate,
        D,
      },
      result: ["m", "days from today, not whole", "d"],
      holds: "the use stays as it was, and is more than none",
      ...straight,
    }),
    passed: formula({
      id: id("day-between"),
      name: name("Days from today to a total between two rows"),
      text: "l + w * (T - M) / (N - M)",
      symbols: {
        l: ["days from today to the row before", "d"],
        w: ["days between the rows", "d"],
        T: total("total when due"),
        M: total("total at the row before"),
        N: total("total at the row after"),
      },
      result: ["m", "days from today, not whole", "d"],
      holds: "even use between the rows",
      ...straight,
    }),
  } as const;
}

export const hours = ofMeter("hours");
export const distance = ofMeter("distance");
