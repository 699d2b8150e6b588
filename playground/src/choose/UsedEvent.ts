/** Says that something chosen was put on the sheet. */
export class UsedEvent extends Event {
  /** what is there now, as a sentence */
  readonly words: string;

  constructor(words: string) {
    super("choose-used", { bubbles: true, composed: true });
    this.words = words;
  }
}

declare global {
  interface HTMLElementEventMap {
    "choose-used": UsedEvent;
  }
}
