import { formula } from "../Formula.js";

const cloth = { w: ["clear opening", "m", "particle size"], d: ["wire diameter", "m", "particle size"] } as const;
const fuel = { rho: ["density of the fuel", "kg/m3"], nu: ["kinematic viscosity of the fuel", "m2/s"] } as const;
const u = ["velocity towards the whole screen", "m/s"] as const;
const result = ["dp", "drop of the screen by this law", "Pa"] as const;
const accuracy = "published screen laws differ by about 2.5, so lowest and highest make the band";

/** Flow over the whole screen. */
export const faceVelocity = formula({
  id: "face-velocity",
  name: "Velocity towards a screen",
  text: "abs(Q) / A",
  symbols: { Q: ["flow", "m3/s"], A: ["area of the screen", "m2"] },
  result: ["u", "velocity towards the whole screen", "m/s"],
  holds: "even flow over the screen",
  accuracy: "exact",
  source: "definition",
});

/** Open share of a cloth's face. */
export const openArea = formula({
  id: "open-area",
  name: "Open share of a woven cloth",
  text: "(w / (w + d))^2",
  symbols: cloth,
  result: ["b", "open share of the face", "1"],
  holds: "plain square weave of round wires",
  accuracy: "exact for that shape",
  source: "W. J. Armour and J. N. Cannon, AIChE J. 14 (1968) 415",
  checkedBy: ["screens/cloths-open_area"],
});

/** How much longer a woven wire is than its run. */
const lengthening = "sqrt(1 + (d / (w + d))^2)";

/** Share of a cloth's volume that is not wire. */
export const clothPorosity = formula({
  id: "cloth-porosity",
  name: "Porosity of a woven cloth",
  text: `1 - pi / 4 * d / (w + d) * ${lengthening}`,
  symbols: cloth,
  result: ["e", "share of the cloth that is not wire", "1"],
  holds: "plain square weave of round wires, two wires thick",
  accuracy: "exact for that shape",
  source: "W. J. Armour and J. N. Cannon, AIChE J. 14 (1968) 415",
  checkedBy: ["screens/cloths-porosity"],
});

/** Wire surface in a volume of cloth. */
export const clothSurface = formula({
  id: "cloth-surface",
  name: "Wire surface per volume of a woven cloth",
  text: `pi / (w + d) * ${lengthening}`,
  symbols: cloth,
  result: ["a", "wire surface per volume", "1/m"],
  holds: "plain square weave of round wires, two wires thick",
  accuracy: "exact for that shape",
  source: "W. J. Armour and J. N. Cannon, AIChE J. 14 (1968) 415",
  checkedBy: ["screens/cloths-surface_per_m"],
});

/** Armour and Cannon's law. */
export const armourCannon = formula({
  id: "screen-armour-cannon",
  name: "Armour and Cannon's law: drop of a woven screen",
  text: "(8.61 * nu * a^2 + 0.52 * u / w) * rho * 2 * d / e^2 * u",
  symbols: {
    ...fuel,
    ...cloth,
    a: ["wire surface per volume", "1/m"],
    e: ["share of the cloth that is not wire", "1"],
    u,
  },
  result,
  holds: "Re 0.1 to 1000 of its own, porosity 0.35 to 0.76, openings 5 to 550 µm",
  accuracy,
  source: "W. J. Armour and J. N. Cannon, AIChE J. 14 (1968) 415",
  checkedBy: ["screens/drops", "screens/creeping"],
});

/** Ehrhardt's law. */
export const ehrhardt = formula({
  id: "screen-ehrhardt",
  name: "Ehrhardt's law: drop of a woven screen",
  text: "(49 * b * nu / d + 0.72 * u) * rho * (1 - b) / (2 * b^2) * u",
  symbols: { ...fuel, d: cloth.d, b: ["open share of the face", "1"], u },
  result,
  holds: "Re 0.5 to 1000 of its own",
  accuracy,
  source: "G. Ehrhardt, Int. Chem. Eng. 23 (1983) 455",
  checkedBy: ["screens/drops"],
});

/** Brundrett's law. */
export const brundrett = formula({
  id: "screen-brundrett",
  name: "Brundrett's law: drop of a woven screen",
  text:
    "(7.125 * nu / (u * d) + 0.88 / log10(u * d / nu + 1.25) + 0.055 * log10(u * d / nu)) " +
    "* (1 - b^2) / b^2 * rho * u^2 / 2",
  symbols: { ...fuel, d: cloth.d, b: ["open share of the face", "1"], u },
  result,
  holds: "Re 0.0001 to 10 000 of the wire",
  accuracy,
  source: "E. Brundrett, J. Fluids Eng. 115 (1993) 239",
  checkedBy: ["screens/drops"],
});

const laws = { p: ["drop by each of the three laws", "Pa"] } as const;
const rest = {
  holds: "where the laws hold",
  accuracy,
  source: "definition",
} as const;

/** The lowest law's drop, with the direction of the flow. */
export const lowestScreen = formula({
  id: "screen-low",
  name: "Drop of a strainer by the lowest of three laws",
  text: "sign(Q) * min(p)",
  symbols: { Q: ["flow", "m3/s"], ...laws },
  result: ["dp", "drop of the strainer", "Pa"],
  ...rest,
});

/** The middle law's drop, with the direction of the flow. */
export const middleScreen = formula({
  id: "screen-middle",
  name: "Drop of a strainer by the middle one of three laws",
  text: "sign(Q) * (sum(p) - min(p) - max(p))",
  symbols: { Q: ["flow", "m3/s"], ...laws },
  result: ["dp", "drop of the strainer", "Pa"],
  ...rest,
});

/** The highest law's drop, with the direction of the flow. */
export const highestScreen = formula({
  id: "screen-high",
  name: "Drop of a strainer by the highest of three laws",
  text: "sign(Q) * max(p)",
  symbols: { Q: ["flow", "m3/s"], ...laws },
  result: ["dp", "drop of the strainer", "Pa"],
  ...rest,
});
