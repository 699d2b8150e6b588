import type { Figure } from "./words.js";

/** Names a figure of one of several systems that are compared, inside `say`. */
export function figOf(of: string, figure: string, text: string): Figure {
  return { figure, text, of };
}
