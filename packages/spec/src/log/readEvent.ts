import { nearest } from "../nearest.js";
import { shown } from "../shown.js";
import type { LogEvent } from "./LogEntry.js";

/** Events as a fault lists them. */
const eventWords = '"reading", "changed all", "changed prefilter A", "new hour meter", "new distance meter" or "note"';

const plainEvents = ["reading", "note", "new hour meter", "new distance meter"] as const;

/** What a row's event says; "" is a reading. */
export function readEvent(text: string): LogEvent | { readonly message: string } {
  if (text === "") return { kind: "reading" };
  const words = text.replace(/\s+/g, " ");
  const plain = plainEvents.find((one) => one === words.toLowerCase());
  if (plain !== undefined) return { kind: plain };
  const [, element] = /^changed (.+)$/i.exec(words) ?? [];
  if (element !== undefined) return { kind: "changed", element: element.toLowerCase() === "all" ? null : element };
  if (/^changed$/i.test(words))
    return { message: 'which element was changed? write "changed all" or its name after it' };
  const meant = nearest(words, plainEvents);
  const hint = meant === undefined ? `write ${eventWords}` : `write ${shown(meant)}`;
  return { message: `${shown(text)} is no event of a log; ${hint}` };
}

/** An event as a log has it written. */
export function eventText(event: LogEvent): string {
  return event.kind === "changed" ? `changed ${event.element ?? "all"}` : event.kind;
}
