import { InputError } from "../InputError.js";
import { requireBetween } from "../require.js";

/** Refuses shares that are not between 0 and 1 or do not add up to 1 (to a part in 1e9, for thirds written in decimals). */
export function requireShares(caller: string, path: string, parts: readonly { readonly share: number }[]): void {
  if (parts.length === 0) throw new InputError(caller, path, "one part or more", parts);
  let sum = 0;
  parts.forEach(({ share }, index) => {
    requireBetween(caller, `${path}[${index}].share`, share, { from: 0, to: 1 });
    sum += share;
  });
  if (!(Math.abs(sum - 1) <= 1e-9)) throw new InputError(caller, `the shares of ${path}`, "1 in all", sum);
}
