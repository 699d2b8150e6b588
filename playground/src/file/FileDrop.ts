import type { ReactiveController, ReactiveControllerHost } from "lit";

/** Gives a view the files let go over the page, before the page's own desk, which opens systems. */
export class FileDrop implements ReactiveController {
  private readonly take: (event: DragEvent) => boolean;

  /** @param take whether it took what was dropped; the desk then leaves it alone */
  constructor(host: ReactiveControllerHost, take: (event: DragEvent) => boolean) {
    this.take = take;
    host.addController(this);
  }

  hostConnected(): void {
    addEventListener("drop", this.onDrop, { capture: true });
  }

  hostDisconnected(): void {
    removeEventListener("drop", this.onDrop, { capture: true });
  }

  private readonly onDrop = (event: DragEvent): void => {
    if (this.take(event)) event.preventDefault();
  };
}
