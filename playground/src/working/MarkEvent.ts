import type { PartPath } from "@thirstline/study/working";

/** Says which part of the system is spoken of, so that the drawing can show it; null for none. */
export class MarkEvent extends Event {
  readonly part: PartPath | null;

  constructor(part: PartPath | null) {
    super("part-marked", { bubbles: true, composed: true });
    this.part = part;
  }
}

declare global {
  interface HTMLElementEventMap {
    "part-marked": MarkEvent;
  }
}
