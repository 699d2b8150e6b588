import { formula } from "../Formula.js";

const c = { c: ["solidity, the share that is fibre", "1"] } as const;
const result = ["k", "permeability over fibre radius squared", "1"] as const;
const checkedBy = ["fibre/laws"];
const accuracy = "real mats scatter widely; the ten laws together make the band";

/** Davies' fit to measured pads. */
export const davies = formula({
  id: "fibres-davies",
  name: "Davies' law for a fibre pad",
  text: "1 / (16 * c^1.5 * (1 + 56 * c^3))",
  symbols: c,
  result,
  holds: "solidity 0.006 to 0.3, fibres across the flow",
  accuracy,
  source: "C. N. Davies, Proc. Inst. Mech. Eng. 1B (1952) 185",
  checkedBy: ["fibre/davies", ...checkedBy],
});

/** Kuwabara's cell. */
export const kuwabara = formula({
  id: "fibres-kuwabara",
  name: "Kuwabara's law for fibres across the flow",
  text: "(-log(c) - 1.5 + 2 * c - c^2 / 2) / (8 * c)",
  symbols: c,
  result,
  holds: "dilute ordered beds, solidity up to about 0.3",
  accuracy,
  source: "S. Kuwabara, J. Phys. Soc. Japan 14 (1959) 527",
  checkedBy,
});

/** Happel's cell. */
export const happelAcross = formula({
  id: "fibres-happel",
  name: "Happel's law for fibres across the flow",
  text: "(-log(c) + (c^2 - 1) / (c^2 + 1)) / (8 * c)",
  symbols: c,
  result,
  holds: "dilute ordered beds, solidity up to about 0.3",
  accuracy,
  source: "J. Happel, AIChE J. 5 (1959) 174",
  checkedBy,
});

/** Jackson and James' random bed. */
export const jacksonJames = formula({
  id: "fibres-jackson-james",
  name: "Jackson and James' law for a random bed of fibres",
  text: "3 / (20 * c) * (-log(c) - 0.931)",
  symbols: c,
  result,
  holds: "dilute beds, solidity up to about 0.25",
  accuracy,
  source: "G. W. Jackson and D. F. James, Can. J. Chem. Eng. 64 (1986) 364",
  checkedBy,
});

/** Drummond and Tahir's square array. */
export const drummondTahir = formula({
  id: "fibres-drummond-tahir",
  name: "Drummond and Tahir's law for a square array of fibres",
  text: "(-log(c) - 1.476 + (2 * c - 0.796 * c^2) / (1 + 0.489 * c - 1.605 * c^2)) / (8 * c)",
  symbols: c,
  result,
  holds: "dilute square arrays across the flow",
  accuracy,
  source: "J. E. Drummond and M. I. Tahir, Int. J. Multiphase Flow 10 (1984) 515",
  checkedBy,
});

/** Tomadakis and Sotirchos' form. */
export const tomadakis = formula({
  id: "fibres-tomadakis-sotirchos",
  name: "Tomadakis and Sotirchos' law for a bed of fibres",
  text: "(1 - c) / (8 * log(1 - c)^2) * (1 - c - e)^(m + 2) / ((1 - e)^m * ((m + 1) * (1 - c) - e)^2)",
  symbols: { ...c, e: ["porosity below which no path leads through", "1"], m: ["exponent of the arrangement", "1"] },
  result,
  holds: "beds whose fibres lie in the plane of the mat, or every way; reads high in very open ones",
  accuracy,
  source:
    "M. M. Tomadakis and S. V. Sotirchos, AIChE J. 39 (1993) 397, as in M. M. Tomadakis and T. J. Robertson, J. Compos. " +
    "Mater. 39 (2005) 163",
  checkedBy,
});

/** Koponen's fit to computed webs. */
export const koponen = formula({
  id: "fibres-koponen",
  name: "Koponen's law for a random fibre web",
  text: "5.55 / (exp(10.1 * c) - 1)",
  symbols: c,
  result,
  holds: "webs of paper-like structure, not below a solidity of about 0.05",
  accuracy,
  source: "A. Koponen and others, Phys. Rev. Lett. 80 (1998) 716",
  checkedBy,
});
