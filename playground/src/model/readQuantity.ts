import type { KindName } from "@thirstline/spec";

/** What a box reads: a kind of quantity, or a share. */
export type Reads = KindName | "share";

/** SI, or what is wrong with the text and what would be right. */
export type Read = { readonly value: number } | { readonly fault: { readonly message: string } };

/** Reads a typed quantity in any unit, or a share such as "30 %" or "0.3"; the units are fetched at the first call. */
export async function readQuantity(text: string, kind: Reads): Promise<Read> {
  if (kind === "share") return readShare(text);
  const { quantity } = await import("@thirstline/spec");
  return quantity(text, kind);
}

function readShare(text: string): Read {
  const [, digits, percent] = /^(\d+(?:\.\d+)?)\s*(%)?$/.exec(text.trim()) ?? [];
  const value = Number(digits ?? Number.NaN) / (percent === undefined ? 1 : 100);
  if (value <= 10) return { value };
  return { fault: { message: `"${text}" is no share; write it as "30 %"` } };
}
