import { shown } from "../shown.js";
import type { Spread } from "./spreadQuantity.js";

const number = String.raw`(\d+(?:\.\d*)?|\.\d+)`;
const pair = new RegExp(`^${number}(?: ?%)? to ${number} ?%$`);

/** The two numbers of a share with a spread, in per cent as typed; undefined for any other text. */
export function splitShare(text: string): readonly [from: string, to: string] | undefined {
  const [, from, to] = text.length < 30 ? (pair.exec(text) ?? []) : [];
  return from === undefined || to === undefined ? undefined : [from, to];
}

/**
 * Reads a share with a spread, "1 % to 3 %" or "1 to 3 %", into 0 to 1; the value taken is as with a quantity. A ± is
 * refused: of "2 % ± 50 %" nobody can say whether it ends at 3 % or at 52 %.
 *
 * @returns undefined for a text without a spread
 */
export function spreadShare(text: string): Spread | { readonly fault: { code: string; message: string } } | undefined {
  if (/±|\+\/-/.test(text)) {
    const message = `${shown(text)} may be meant in two ways; write both ends, such as "1 % to 3 %"`;
    return { fault: { code: "not a spread", message } };
  }
  const split = splitShare(text);
  if (split === undefined) return undefined;
  const [from, to] = split;
  const [low, high] = [Number(from) / 100, Number(to) / 100];
  if (low < high && high <= 1) return { value: low > 0 ? Math.sqrt(low * high) : high / 2, low, high };
  const right = low > high && low <= 1 ? `write it as "${to} to ${from} %"` : 'write two, such as "1 % to 3 %"';
  const message = `${shown(text)} is not two rising shares of the whole; ${right}`;
  return { fault: { code: "not a spread", message } };
}
