/**
 * Where a part stands: a list of the system, the position in it and, inside a bank, the branch and the position there.
 * `tank` names the tank whose path is meant.
 */
export interface Place {
  readonly side: "tank" | "suction" | "delivery";
  readonly tank?: number;
  readonly at: number;
  readonly branch?: number;
  readonly inner?: number;
}

/** What can be chosen on the sheet: a part, or one of the things every system has. */
export type Chosen =
  | { readonly kind: "part"; readonly place: Place }
  /** the gap before a position, where a part can be added */
  | { readonly kind: "gap"; readonly place: Place }
  | { readonly kind: "tank"; readonly tank: number }
  | { readonly kind: "pump" }
  | { readonly kind: "engine" };

/** A text that is the same for the same choice, to compare and to key by. */
export function keyOf(chosen: Chosen): string {
  if (chosen.kind === "part" || chosen.kind === "gap") {
    const { side, tank, at, branch, inner } = chosen.place;
    return [chosen.kind, side, tank ?? "", at, branch ?? "", inner ?? ""].join("/");
  }
  return chosen.kind === "tank" ? `tank/${chosen.tank}` : chosen.kind;
}
