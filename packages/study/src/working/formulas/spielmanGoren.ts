import { formula } from "../Formula.js";

const c = { c: ["solidity, the share that is fibre", "1"] } as const;
const result = ["k", "permeability over fibre radius squared", "1"] as const;
const checkedBy = ["fibre/laws"];
const accuracy = "real mats scatter widely; the ten laws together make the band";

/** Spielman and Goren's law: what its root gives. */
export const spielmanGoren = formula({
  id: "fibres-spielman-goren",
  name: "Spielman and Goren's law for a permeable bed of fibres",
  text: "s^2",
  symbols: { s: ["root of the permeability over fibre radius", "1"] },
  result,
  holds: "dilute beds, solidity up to about 0.25",
  accuracy,
  source: "L. Spielman and S. L. Goren, Environ. Sci. Technol. 2 (1968) 279",
  checkedBy: [...checkedBy, "fibre/bessel-ratio"],
});

/** The left side of its condition. */
export const spielmanGorenSolids = formula({
  id: "fibres-spielman-goren-solids",
  name: "Spielman and Goren's condition, left side",
  text: "1 / (4 * c)",
  symbols: c,
  result: ["y", "side of the condition", "1"],
  holds: "dilute beds, solidity up to about 0.25",
  accuracy,
  source: "L. Spielman and S. L. Goren, Environ. Sci. Technol. 2 (1968) 279",
  checkedBy,
});

/** The right side of its condition. */
export const spielmanGorenDrag = formula({
  id: "fibres-spielman-goren-drag",
  name: "Spielman and Goren's condition, right side",
  text: "A + B * s * q",
  symbols: {
    A: ["share of the drag that is fixed", "1"],
    B: ["share that depends on the neighbours", "1"],
    s: ["root of the permeability over fibre radius", "1"],
    q: ["ratio of the Bessel functions K1 and K0 at 1/s", "1"],
  },
  result: ["y", "side of the condition", "1"],
  holds: "dilute beds, solidity up to about 0.25",
  accuracy,
  source: "L. Spielman and S. L. Goren, Environ. Sci. Technol. 2 (1968) 279",
  checkedBy: ["fibre/bessel-ratio"],
});
