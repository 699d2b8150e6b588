import type { ReactiveController, ReactiveControllerHost } from "lit";
import { Helper } from "./Helper.js";
import type { Outcome, Task } from "./messages.js";
import { startWorker } from "./startWorker.js";

/** Has something worked out for an element beside the page, and knows in words when that went wrong. */
export class HelperController implements ReactiveController {
  /** What is to be said of the work itself, or "". */
  trouble = "";
  private readonly host: ReactiveControllerHost;
  private readonly told: (outcome: Outcome) => void;
  private helper: Helper | null = null;
  private task: Task | null = null;
  private sending: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost, told: (outcome: Outcome) => void) {
    this.host = host;
    this.told = told;
    host.addController(this);
  }

  hostConnected(): void {
    if (this.task) this.ask(this.task);
  }

  hostDisconnected(): void {
    clearTimeout(this.sending);
    this.helper?.end();
    this.helper = null;
  }

  /** Asks for something; whatever was asked before counts no more. */
  ask(task: Task): void {
    this.task = task;
    this.trouble = "";
    this.helper ??= new Helper(startWorker, {
      outcome: (outcome) => {
        this.told(outcome);
        this.host.requestUpdate();
      },
      stopped: (again) => {
        this.trouble = again
          ? "What works this out stopped on the way; it was started again."
          : "What works this out stopped again, so this is not shown. Change anything to try once more.";
        this.host.requestUpdate();
      },
    });
    // After the frame: to hand a system over takes longer than to draw what changed.
    clearTimeout(this.sending);
    this.sending = setTimeout(() => this.helper?.ask(task));
  }
}
