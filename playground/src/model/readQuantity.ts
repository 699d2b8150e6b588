import type { KindName, QuantityResult } from "@thirstline/spec";

/** Reads a typed quantity in any unit; the units are fetched at the first call. */
export async function readQuantity(text: string, kind: KindName): Promise<QuantityResult> {
  const { quantity } = await import("@thirstline/spec");
  return quantity(text, kind);
}
