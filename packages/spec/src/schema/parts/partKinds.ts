import type { SystemPart } from "../../system/Part.js";
import { filterBlock, toFilter } from "./filter.js";
import { fittingBlock, toFitting } from "./fitting.js";
import { lineBlock, toLine } from "./line.js";
import { orificeBlock, toOrifice } from "./orifice.js";
import { riseBlock, toRise } from "./rise.js";
import { strainerBlock, toStrainer } from "./strainer.js";
import { toValve, valveBlock } from "./valve.js";

/** How a kind of part is read: its block in a file, and the way to SI. */
interface Reading {
  readonly block: unknown;
  readonly toSi: (data: never, name: string) => SystemPart;
}

/** Every kind of part by the key that names it in a file, but a bank, which holds parts itself. */
export const partKinds = {
  line: { block: lineBlock, toSi: toLine },
  fitting: { block: fittingBlock, toSi: toFitting },
  filter: { block: filterBlock, toSi: toFilter },
  rise: { block: riseBlock, toSi: toRise },
  valve: { block: valveBlock, toSi: toValve },
  orifice: { block: orificeBlock, toSi: toOrifice },
  strainer: { block: strainerBlock, toSi: toStrainer },
} as const satisfies Readonly<Record<Exclude<SystemPart["part"], "bank">, Reading>>;

/** Name of one of them. */
export type PartKind = keyof typeof partKinds;
