import type { ReactiveController, ReactiveControllerHost } from "lit";

/** Does something once what has just been changed is painted; asked for again before that, it is done once. */
export class AfterFrame implements ReactiveController {
  private readonly done: () => void;
  private waits = false;

  constructor(host: ReactiveControllerHost, done: () => void) {
    this.done = done;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.waits = false;
  }

  ask(): void {
    if (this.waits) return;
    this.waits = true;
    const soon = () => setTimeout(() => this.now());
    // A page that nobody sees is not painted.
    if (document.hidden) soon();
    else requestAnimationFrame(soon);
  }

  /** At once, where it still waits. */
  now(): void {
    if (!this.waits) return;
    this.waits = false;
    this.done();
  }
}
