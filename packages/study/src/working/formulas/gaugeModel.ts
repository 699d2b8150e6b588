import { formula } from "../Formula.js";

const table = {
  holds: "demand from 0.7 to 1.4 times the noted one, resistance from clean to ten thousand times clean",
  accuracy: "pressures are nearly a parabola in the demand and straight in a resistance; far below any gauge's error",
  source: "interpolation (J.-L. Lagrange)",
} as const;

/** Demand at a reading. */
export const notedDemand = formula({
  id: "gauge-noted-demand",
  name: "Demand at a reading, as noted",
  text: "l * Q",
  symbols: { l: ["load over full load", "1", "ratio"], Q: ["demand at full load", "m3/s"] },
  result: ["Q_n", "demand as noted", "m3/s"],
  holds: "burn and return in proportion to the load; full load where nobody noted it",
  accuracy: "some 5 %, or 15 % where nobody noted it",
  source: "common practice, no source",
});

/** A demand over the noted one. */
export const timesDemand = formula({
  id: "gauge-times-demand",
  name: "A demand over the one stated or noted",
  text: "f * Q",
  symbols: { f: ["demand over that one", "1"], Q: ["demand as stated or noted", "m3/s"] },
  result: ["Q_f", "demand", "m3/s"],
  holds: "always",
  accuracy: "exact",
  source: "definition",
});

/** How much one demand of the table counts. */
export const demandWeight = formula({
  id: "gauge-demand-weight",
  name: "How much the model's figure at one demand counts",
  text: "(f - b) * (f - c) / ((a - b) * (a - c))",
  symbols: {
    f: ["demand over the noted one", "1"],
    a: ["demand of the figure", "1"],
    b: ["another demand of the table", "1"],
    c: ["the third demand of the table", "1"],
  },
  result: ["w", "weight of the figure", "1"],
  ...table,
});

/** Pressure between figures of the model. */
export const tablePressure = formula({
  id: "gauge-table",
  name: "What the model lets read, between its figures at some demands and resistances",
  text: "sum(w * a) + (r - i) / (j - i) * (sum(w * b) - sum(w * a))",
  symbols: {
    w: ["weight of each demand", "1"],
    a: ["what the model lets read at each demand with the lesser resistance", "Pa"],
    b: ["the same with the larger resistance", "Pa"],
    r: ["resistance over clean", "1"],
    i: ["the lesser resistance", "1"],
    j: ["the larger resistance", "1"],
  },
  result: ["p", "what the model lets read", "Pa"],
  ...table,
});

/** A feed pressure so turned that soil makes it grow. */
export const turnedPressure = formula({
  id: "gauge-turned",
  name: "A pressure turned round, so that soil makes it grow, and back",
  text: "-p",
  symbols: { p: ["pressure", "Pa"] },
  result: ["v", "pressure turned round", "Pa"],
  holds: "feed pressures, which fall as elements fill",
  accuracy: "exact",
  source: "definition",
});

/** The same where the vacuum was read too. */
export const turnedWithVacuum = formula({
  id: "gauge-turned-with-vacuum",
  name: "A feed pressure turned round, with the vacuum that was read in place of the reckoned one",
  text: "-p - (V - V_n)",
  symbols: {
    p: ["feed pressure reckoned", "Pa"],
    V: ["vacuum reckoned", "Pa"],
    V_n: ["vacuum read", "Pa"],
  },
  result: ["v", "pressure turned round", "Pa"],
  holds: "pumps whose outlet follows their inlet",
  accuracy: "that of the vacuum gauge",
  source: "definition",
});

/** What a reading is reckoned to be. */
export const reckonedPressure = formula({
  id: "gauge-reckoned",
  name: "What a gauge is reckoned to read",
  text: "sum(p)",
  symbols: { p: ["what the model lets read, what all readings are off by, and what is fitted besides", "Pa"] },
  result: ["p", "what the gauge is reckoned to read", "Pa"],
  holds: "steady readings, the engine warm",
  accuracy: "the scatter of a reading",
  source: "definition",
});

/** How fast a pressure grows with something. */
export const pressureSlope = formula({
  id: "gauge-slope",
  name: "How fast what is read grows with demand, or with resistance",
  text: "(a - b) / s",
  symbols: {
    a: ["what the model lets read with more", "Pa"],
    b: ["what the model lets read with less", "Pa"],
    s: ["the one less the other", "1"],
  },
  result: ["P", "growth of what is read", "Pa"],
  holds: "differences small enough to be straight",
  accuracy: "within a few per cent",
  source: "difference quotient",
});
