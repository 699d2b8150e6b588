import { formula } from "../Formula.js";

/** Friction number G = f Re^2 at the turbulent end of the passage. */
export const frictionNumber = formula({
  id: "friction-number",
  name: "Friction number",
  text: "Re^2 / x^2",
  symbols: { Re: ["Reynolds number", "1"], x: ["one over the root of the friction factor", "1"] },
  result: ["G", "friction number, the friction factor times the Reynolds number squared", "1"],
  holds: "turbulent flow",
  accuracy: "that of the friction factor",
  source: "definition",
});

/** How the friction number rises with the Reynolds number at the turbulent end. */
export const frictionSlope = formula({
  id: "friction-slope",
  name: "Slope of the friction number in turbulent flow",
  text: "2 * Re / x^2 / (1 + 2 / log(10) * (2.51 / Re) / (epsilon / (3.7 * D) + 2.51 * x / Re))",
  symbols: {
    Re: ["Reynolds number", "1"],
    x: ["one over the root of the friction factor", "1"],
    epsilon: ["roughness of the wall", "m", "bore"],
    D: ["bore", "m", "bore"],
  },
  result: ["s", "slope of the friction number", "1"],
  holds: "turbulent flow: the Colebrook–White equation differentiated",
  accuracy: "exact for that equation",
  source: "C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133, differentiated here",
});

/** How far along the passage a Reynolds number lies. */
export const passageShare = formula({
  id: "passage-share",
  name: "Place between laminar and turbulent flow",
  text: "(Re - Re_1) / (Re_2 - Re_1)",
  symbols: {
    Re: ["Reynolds number", "1"],
    Re_1: ["Reynolds number at which laminar flow ends", "1"],
    Re_2: ["Reynolds number from which the flow is turbulent", "1"],
  },
  result: ["t", "place in the passage, 0 to 1", "1"],
  holds: "from Re 2300 to Re 4000",
  accuracy: "exact",
  source: "definition",
});

/** The friction number within the passage. */
export const passageNumber = formula({
  id: "passage-friction-number",
  name: "Friction number between laminar and turbulent flow",
  text:
    "64 * Re_1 + 64 * w * t + (3 * (G_2 - 64 * Re_1) - 128 * w - s * w) * t^2 " +
    "+ (64 * w + s * w - 2 * (G_2 - 64 * Re_1)) * t^3",
  symbols: {
    Re_1: ["Reynolds number at which laminar flow ends", "1"],
    w: ["width of the passage as a Reynolds number", "1"],
    t: ["place in the passage, 0 to 1", "1"],
    G_2: ["friction number at the turbulent end", "1"],
    s: ["slope of the friction number there", "1"],
  },
  result: ["G", "friction number, the friction factor times the Reynolds number squared", "1"],
  holds: "from Re 2300 to Re 4000, where the flow is unsteady and no law holds: a smooth join, and marked as such",
  accuracy: "not known; the verdict takes the worse of this and turbulent flow from Re 2300 up",
  source:
    "cubic that meets value and slope at both ends, monotone by F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17 " +
    "(1980) 238; the join itself is common practice, no source",
});

/** Drop of a line by its friction number. */
export const passageDrop = formula({
  id: "passage-drop",
  name: "Drop of a line between laminar and turbulent flow",
  text: "sign(Q) * rho * nu^2 * L * G / (2 * D^3)",
  symbols: {
    Q: ["flow", "m3/s"],
    rho: ["density of the fuel", "kg/m3"],
    nu: ["kinematic viscosity of the fuel", "m2/s"],
    L: ["length", "m"],
    G: ["friction number", "1"],
    D: ["bore", "m", "bore"],
  },
  result: ["dp", "drop of a line between laminar and turbulent flow", "Pa"],
  holds: "with the friction number of the flow: the Darcy–Weisbach equation in other letters",
  accuracy: "that of the friction number",
  source: "F. M. White, Fluid Mechanics (7th ed. 2011), sections 6.4 and 6.6",
});
