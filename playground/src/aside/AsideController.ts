import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { Answer, Numbered, Progress, Refused } from "./asideMessages.js";

/**
 * Has something worked out for an element beside the page. Only what was asked last counts: what the worker is still at is
 * put an end to with the worker, so that nothing waits behind it. A worker at rest is kept, with what it knows.
 */
export class AsideController<Asked, Told extends Answer> implements ReactiveController {
  /** How far it is; null while nothing is worked out. */
  progress: Omit<Progress, "kind"> | null = null;
  /** Why there is no answer, or "". */
  refusal = "";
  private readonly host: ReactiveControllerHost;
  private readonly start: () => Worker;
  private readonly told: (told: Told, asked: Asked) => void;
  private worker: Worker | null = null;
  private last = 0;
  private asked: Asked | null = null;
  /** Whether work was put an end to by the host's being taken away. */
  private isLeft = false;

  /**
   * @param start makes a worker, each time one is needed
   * @param told is told every answer, a refusal among them, with what was asked
   */
  constructor(host: ReactiveControllerHost, start: () => Worker, told: (told: Told, asked: Asked) => void) {
    this.host = host;
    this.start = start;
    this.told = told;
    host.addController(this);
  }

  get busy(): boolean {
    return this.progress !== null;
  }

  hostConnected(): void {
    if (this.isLeft && this.asked !== null) this.ask(this.asked);
  }

  hostDisconnected(): void {
    const { busy } = this;
    this.stop();
    this.isLeft = busy;
  }

  ask(asked: Asked): void {
    if (this.busy) this.stop();
    this.isLeft = false;
    this.asked = asked;
    this.refusal = "";
    this.progress = { words: "", done: 0, of: 1 };
    this.worker ??= this.started();
    this.worker.postMessage({ id: ++this.last, message: asked } satisfies Numbered<Asked>);
    this.host.requestUpdate();
  }

  /** Puts an end to what is being worked out; what was told of it stays. */
  stop(): void {
    this.worker?.terminate();
    this.worker = null;
    this.progress = null;
    this.host.requestUpdate();
  }

  private started(): Worker {
    const worker = this.start();
    worker.addEventListener("message", ({ data }: MessageEvent<Numbered<Told | Progress>>) => this.take(data));
    worker.addEventListener("error", (event) => {
      event.preventDefault();
      if (worker !== this.worker) return;
      this.stop();
      this.refusal = "what works this out stopped on the way; try it once more";
    });
    return worker;
  }

  private take({ id, message }: Numbered<Told | Progress>): void {
    const { asked } = this;
    if (id !== this.last || asked === null) return;
    if (isProgress(message)) this.progress = message;
    else {
      if (message.done !== false) this.progress = null;
      if (isRefused(message)) this.refusal = message.why;
      this.told(message, asked);
    }
    this.host.requestUpdate();
  }
}

function isProgress(message: Answer | Progress): message is Progress {
  return message.kind === "progress";
}

function isRefused(message: Answer | Refused): message is Refused {
  return message.kind === "refused";
}
