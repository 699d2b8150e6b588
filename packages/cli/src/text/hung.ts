import { WIDTH, widthOf, wrap } from "./wrap.js";

/** A text behind a head, its further lines under its first: "V = " and what follows. */
export function hung(head: string, text: string): string[] {
  const room = widthOf(head);
  return wrap(text, "", WIDTH - room).map((line, at) => `${at === 0 ? head : " ".repeat(room)}${line}`);
}
