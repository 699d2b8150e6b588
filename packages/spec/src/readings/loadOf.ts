import { shown } from "../shown.js";

/** Most a load may be over the full demand; more is likelier a slip. */
const MOST = 1.5;

/**
 * A load as people note it, "75 %", over the full demand.
 *
 * @param inPerCent whether a number alone is in per cent, as its column's head says
 */
export function loadOf(text: string, inPerCent: boolean): { readonly value: number } | { readonly message: string } {
  const [, digits = "", sign = ""] = /^(\d+\.?\d*|\.\d+) ?(%?)$/.exec(text) ?? [];
  if (digits === "" || text.length > 20) {
    return { message: `${shown(text)} is not a load; write its share of the full demand, such as "75 %"` };
  }
  if (sign === "" && !inPerCent) return { message: `${shown(text)} has no unit; write it as "${digits} %"` };
  const value = Number(digits) / 100;
  if (value > 0 && value <= MOST) return { value };
  return { message: `${shown(text)} is not a load an engine runs at; more than 0 to ${100 * MOST} % makes sense` };
}
