import type { Leaf } from "@thirstline/study/working";
import type { Subject } from "./Question.js";

/** Asks the page to show how a figure was reached. The keyboard comes back to what sent it. */
export class WhyEvent extends Event {
  readonly leaf: Leaf;
  /** what the figure is of; null for the system on the sheet */
  readonly subject: Subject | null;

  constructor(leaf: Leaf, subject: Subject | null) {
    super("figure-why", { bubbles: true, composed: true });
    this.leaf = leaf;
    this.subject = subject;
  }
}

declare global {
  interface HTMLElementEventMap {
    "figure-why": WhyEvent;
  }
}
