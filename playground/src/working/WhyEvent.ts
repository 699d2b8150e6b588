import type { Leaf } from "@thirstline/study/working";

/** Asks the page to show how a figure was reached. The keyboard comes back to what sent it. */
export class WhyEvent extends Event {
  readonly leaf: Leaf;

  constructor(leaf: Leaf) {
    super("figure-why", { bubbles: true, composed: true });
    this.leaf = leaf;
  }
}

declare global {
  interface HTMLElementEventMap {
    "figure-why": WhyEvent;
  }
}
