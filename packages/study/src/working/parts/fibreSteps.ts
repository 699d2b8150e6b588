import { type FibreLawName, fibreLaws } from "@thirstline/core";
import type { Formula } from "../Formula.js";
import * as laws from "../formulas/fibres.js";
import type { Step } from "../Step.js";
import { fromSource, inWords, searched, worked } from "../worked.js";

type Plain = Exclude<FibreLawName, `tomadakis${string}` | `spielmanGoren${string}`>;

/** How each law is called: after whom, and how its fibres lie where there are several. */
export const fibreLawWords: Readonly<Record<FibreLawName, string>> = {
  davies: "Davies",
  kuwabara: "Kuwabara",
  happelAcross: "Happel",
  jacksonJames: "Jackson and James",
  drummondTahir: "Drummond and Tahir",
  tomadakisThrough: "Tomadakis and Sotirchos (flat mat)",
  tomadakisRandom: "Tomadakis and Sotirchos (every way)",
  spielmanGorenFlat: "Spielman and Goren (flat mat)",
  spielmanGorenRandom: "Spielman and Goren (every way)",
  koponen: "Koponen",
};

/** Laws of solidity alone. */
const plainLaws = {
  davies: laws.davies,
  kuwabara: laws.kuwabara,
  happelAcross: laws.happelAcross,
  jacksonJames: laws.jacksonJames,
  drummondTahir: laws.drummondTahir,
  koponen: laws.koponen,
} as const satisfies Record<Plain, Formula<"c">>;

/** Where a bed stops to let through and how fast it gets there; Tomadakis and Robertson (2005). */
const percolation = {
  tomadakisThrough: { e: 0.11, m: 0.785 },
  tomadakisRandom: { e: 0.037, m: 0.661 },
} as const;

/** Shares of the drag that do not, and do, depend on the neighbours; Spielman and Goren (1968). */
const arrangements = {
  spielmanGorenFlat: { A: 1 / 2, B: 1 },
  spielmanGorenRandom: { A: 1 / 3, B: 5 / 6 },
} as const;

/** Permeability over fibre radius squared of a solidity, by a law. */
export function fibrePermeability(law: FibreLawName, c: Step): Step {
  const value = fibreLaws[law](c.value);
  if (law === "tomadakisThrough" || law === "tomadakisRandom") {
    const { e, m } = percolation[law];
    const { source } = laws.tomadakis;
    const constant = (name: string, own: number) => fromSource(source, { name, value: own, unit: "1", kind: "plain" });
    return worked(
      laws.tomadakis,
      {
        c,
        e: constant("porosity below which no path leads through", e),
        m: constant("exponent of the arrangement", m),
      },
      { value },
    );
  }
  if (law === "spielmanGorenFlat" || law === "spielmanGorenRandom") return ofPermeableBed(law, c, value);
  return worked(plainLaws[law], { c }, { value });
}

function ofPermeableBed(law: keyof typeof arrangements, c: Step, value: number): Step {
  const { A, B } = arrangements[law];
  const plain = {
    name: "root of the permeability over fibre radius",
    value: Math.sqrt(value),
    unit: "1",
    kind: "plain",
  } as const;
  const itself = inWords("as found", plain);
  const share = (name: string, own: number) =>
    fromSource(laws.spielmanGoren.source, { name, value: own, unit: "1", kind: "plain" });
  const right = worked(laws.spielmanGorenDrag, {
    A: share("share of the drag that is fixed", A),
    B: share("share that depends on the neighbours", B),
    s: itself,
    q: fromSource("NIST Digital Library of Mathematical Functions, 10.32.9, summed numerically; from memory", {
      name: "ratio of the Bessel functions K1 and K0 at 1/s",
      value: besselRatio(1 / itself.value),
      unit: "1",
      kind: "plain",
    }),
  });
  const words = "both sides of the law's condition agree there";
  const left = worked(laws.spielmanGorenSolids, { c });
  const s = searched("found by halving", plain, [{ words, left, relation: "=", right }]);
  return worked(laws.spielmanGoren, { s }, { value });
}

/** K1 over K0, as integrals of exp(-x cosh t), apart from core's own so that one checks the other. */
function besselRatio(x: number): number {
  const step = Math.min(0.05, 0.2 / Math.sqrt(x));
  let [order0, order1] = [0.5, 0.5];
  for (let at = 1; at < 4000; at++) {
    const cosh = Math.cosh(at * step);
    const weight = Math.exp(-x * (cosh - 1));
    order0 += weight;
    order1 += weight * cosh;
    if (weight * cosh < 1e-20) break;
  }
  return order1 / order0;
}
