import { stepByKey } from "../model/stepByKey.js";

/** Where a plot is read: under the pointer, else where it was pressed or keys have gone; places among its figures. */
export class PlotPlace {
  /** null while the pointer is elsewhere */
  under: number | null = null;
  private kept: number | null = null;
  private readonly changed: () => void;

  /** @param changed is told when what is kept is another */
  constructor(changed: () => void) {
    this.changed = changed;
  }

  /** Whether what is read stands where it was kept, with the pointer elsewhere. */
  get isKept(): boolean {
    return this.under === null && this.kept !== null;
  }

  /** The place that is read of so many; null for at rest. */
  at(last: number): number | null {
    if (this.under !== null || this.kept === null) return this.under;
    return Math.min(this.kept, last);
  }

  /** Keeps what is read where the pointer is, so that the pointer can go to what it reads; pressed again, lets it go. */
  readonly onPress = (): void => {
    this.keep(this.under === this.kept ? null : this.under);
  };

  /** The keys go along the chart; `rest` is the place at rest. */
  onKey(event: KeyboardEvent, rest: number, last: number): void {
    const letGo = event.key === "Escape" && this.kept !== null;
    const next = stepByKey(event.key, this.at(last) ?? rest, last);
    if (next === null && !letGo) return;
    event.preventDefault();
    event.stopPropagation();
    this.under = null;
    this.keep(next);
  }

  private keep(place: number | null): void {
    this.kept = place;
    this.changed();
  }
}
