import { davies } from "./davies.js";
import { drummondTahir } from "./drummondTahir.js";
import { happelAcross } from "./happelAcross.js";
import { jacksonJames } from "./jacksonJames.js";
import { koponen } from "./koponen.js";
import { kuwabara } from "./kuwabara.js";
import { spielmanGorenFlat } from "./spielmanGorenFlat.js";
import { spielmanGorenRandom } from "./spielmanGorenRandom.js";
import { tomadakisRandom } from "./tomadakisRandom.js";
import { tomadakisThrough } from "./tomadakisThrough.js";

/** The name of a fibre-bed law in `fibreLaws`. */
export type FibreLawName =
  | "davies"
  | "kuwabara"
  | "happelAcross"
  | "jacksonJames"
  | "drummondTahir"
  | "tomadakisThrough"
  | "tomadakisRandom"
  | "spielmanGorenFlat"
  | "spielmanGorenRandom"
  | "koponen";

/**
 * Ten published laws for what a bed of fibres lets through, by name: solidity to permeability over fibre radius squared.
 * They are estimates: between them the answers differ by a factor of about 2.6 at solidity 0.10 and 3.8 at 0.05, so quote a
 * band and not one figure.
 *
 * Each law holds for creeping flow in its own range of solidity and refuses what lies outside it.
 *
 * @throws InputError from each law, when solidity is outside its range
 * @see each law for its source
 * @example
 * fibreLaws.davies(0.1) * (5e-6 / 2) ** 2 // 1.1697582490561297e-11, m2, for fibres of 5 um
 */
export const fibreLaws: Readonly<Record<FibreLawName, (solidity: number) => number>> = {
  davies,
  kuwabara,
  happelAcross,
  jacksonJames,
  drummondTahir,
  tomadakisThrough,
  tomadakisRandom,
  spielmanGorenFlat,
  spielmanGorenRandom,
  koponen,
};
