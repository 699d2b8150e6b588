import { shown } from "../shown.js";

/** The message for an element whose name another has. */
export function sameName(name: string): string {
  return `${shown(name)} is the name of an element above already; give this one its own`;
}
