import type { System } from "@thirstline/spec/system";
import type { Chosen } from "./Place.js";

/**
 * Asks the sheet to change its system. Changes of one `merge` that follow at once make one step of undo. A change that
 * cannot be is refused: the event is then cancelled.
 */
export class EditEvent extends Event {
  readonly change: (system: System) => System;
  readonly merge: string | null;

  constructor(change: (system: System) => System, merge: string | null = null) {
    super("sheet-edit", { bubbles: true, composed: true, cancelable: true });
    this.change = change;
    this.merge = merge;
  }
}

/** Asks the sheet to show a part, a gap, a tank, the pump or the engine; null to show none. */
export class ChooseEvent extends Event {
  readonly chosen: Chosen | null;

  constructor(chosen: Chosen | null) {
    super("sheet-choose", { bubbles: true, composed: true });
    this.chosen = chosen;
  }
}

/** Asks the sheet to open another system. */
export class OpenEvent extends Event {
  readonly system: System;
  /** what there is to know about it, in a sentence or none */
  readonly notice: string;

  constructor(system: System, notice = "") {
    super("sheet-open", { bubbles: true, composed: true });
    this.system = system;
    this.notice = notice;
  }
}

/** Says what was entered into a box, SI; null when an optional box was emptied. */
export class ValueEvent extends Event {
  readonly value: number | null;

  constructor(value: number | null) {
    super("value-changed", { bubbles: true, composed: true });
    this.value = value;
  }
}

declare global {
  interface HTMLElementEventMap {
    "value-changed": ValueEvent;
    "sheet-edit": EditEvent;
    "sheet-open": OpenEvent;
    "sheet-choose": ChooseEvent;
  }
}
