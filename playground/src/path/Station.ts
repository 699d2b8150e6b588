import type { System, SystemPart } from "@thirstline/spec/system";
import type { PartRow } from "@thirstline/study";
import type { Chosen } from "../model/Place.js";

/** What is drawn at a station. */
export type Shape =
  | { readonly kind: "tank"; readonly index: number }
  | { readonly kind: "pump"; readonly pump: System["pump"]["kind"] }
  | { readonly kind: "engine"; readonly injection: boolean }
  | { readonly kind: "part"; readonly part: SystemPart };

/** One thing on the path with what it costs. */
export interface Item {
  readonly shape: Shape;
  readonly name: string;
  readonly chosen: Chosen;
  /** null for the engine, which costs nothing */
  readonly row: PartRow | null;
}

/** One station of the main path: an item, or a bank whose branches run side by side. */
export interface Station {
  readonly item: Item;
  /** items of each branch, in order; empty for what is no bank */
  readonly branches: readonly (readonly Item[])[];
  readonly side: "suction" | "delivery";
}
