import type { Kind } from "./kinds.js";

/** Why a text is no quantity of the kind wanted. */
export interface QuantityFault {
  /** For programs: which of the few ways in which a quantity can be wrong. */
  readonly code:
    | "no unit"
    | "unknown unit"
    | "wrong measure"
    | "out of range"
    | "not a quantity"
    | "decimal comma"
    | "too long"
    | "not a spread";
  /** For people: what is wrong and what would be right, without a full stop. */
  readonly message: string;
}

/** A reading that failed. */
export function fault(code: QuantityFault["code"], message: string): { readonly fault: QuantityFault } {
  return { fault: { code, message } };
}

/** A usual quantity of a kind, in quotes. */
export function like(kind: Kind): string {
  return `"${kind.example}"`;
}

/** The unit a kind is usually written in, from its example. */
export function unitOf(kind: Kind): string {
  return kind.example.slice(kind.example.indexOf(" ") + 1);
}
