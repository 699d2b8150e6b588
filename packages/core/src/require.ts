import { InputError } from "./InputError.js";

// Every guard is turned round ("if not inside, refuse") so that NaN fails too: every comparison with NaN is false.
// A value that is not a number at all (plain JavaScript callers) fails the same way and never reaches a formula.

/** Refuses a value that is not a finite number above the bound. */
export function requireMoreThan(caller: string, path: string, value: number, bound: number, unit = ""): void {
  if (!(isNumber(value) && value > bound && value < Infinity)) {
    throw new InputError(caller, path, withUnit(`more than ${bound}`, unit), value);
  }
}

/** Refuses a value that is not a finite number at or above the bound. */
export function requireAtLeast(caller: string, path: string, value: number, bound: number, unit = ""): void {
  if (!(isNumber(value) && value >= bound && value < Infinity)) {
    throw new InputError(caller, path, withUnit(`at least ${bound}`, unit), value);
  }
}

/** Refuses a value outside two bounds; both bounds themselves are allowed. */
export function requireBetween(
  caller: string,
  path: string,
  value: number,
  bounds: { readonly from: number; readonly to: number },
  unit = "",
): void {
  if (!(isNumber(value) && value >= bounds.from && value <= bounds.to)) {
    throw new InputError(caller, path, withUnit(`between ${bounds.from} and ${bounds.to}`, unit), value);
  }
}

/** Refuses NaN, infinities and everything that is not a number. */
export function requireFinite(caller: string, path: string, value: number, unit = ""): void {
  if (!Number.isFinite(value)) throw new InputError(caller, path, withUnit("a finite number", unit, " of "), value);
}

function isNumber(value: unknown): value is number {
  return typeof value === "number";
}

function withUnit(words: string, unit: string, joint = " "): string {
  return unit === "" ? words : `${words}${joint}${unit}`;
}
