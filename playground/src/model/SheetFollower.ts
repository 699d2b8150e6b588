import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { Sheet } from "./Sheet.js";

/** Tells a view of every change of the sheet it shows, and of those it did not hear of while it was put away. */
export class SheetFollower implements ReactiveController {
  private readonly host: ReactiveControllerHost & { readonly sheet: Sheet };
  private readonly changed: () => void;

  constructor(host: ReactiveControllerHost & { readonly sheet: Sheet }, changed: () => void) {
    this.host = host;
    this.changed = changed;
    host.addController(this);
  }

  hostConnected(): void {
    this.host.sheet.addEventListener("changed", this.changed);
    this.changed();
  }

  hostDisconnected(): void {
    this.host.sheet.removeEventListener("changed", this.changed);
  }
}
