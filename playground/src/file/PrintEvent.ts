/** Asks the sheet to print itself with a link, or none, on it. */
export class PrintEvent extends Event {
  readonly link: string;

  constructor(link: string) {
    super("sheet-print", { bubbles: true, composed: true });
    this.link = link;
  }
}

declare global {
  interface HTMLElementEventMap {
    "sheet-print": PrintEvent;
  }
}
