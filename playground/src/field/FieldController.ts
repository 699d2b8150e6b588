import type { ReactiveController, ReactiveControllerHost } from "lit";
import { trustedScript } from "../model/trustedScript.js";
import source from "./field.worker.ts?worker&url";
import type { Asked, Numbered, Told } from "./messages.js";

/** Has something worked out for an element beside the page; only what was asked last counts. */
export class FieldController implements ReactiveController {
  /** Whether something is being worked out. */
  busy = false;
  /** Why there is no answer, or "". */
  refusal = "";
  private readonly host: ReactiveControllerHost;
  private readonly told: (told: Told) => void;
  private worker: Worker | null = null;
  private last = 0;

  constructor(host: ReactiveControllerHost, told: (told: Told) => void) {
    this.host = host;
    this.told = told;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.stop();
  }

  ask(asked: Asked): void {
    // What it is still at would only be waited for. A worker at rest is kept: it knows the systems it has read.
    if (this.busy) this.stop();
    this.refusal = "";
    this.busy = true;
    this.worker ??= this.started();
    this.worker.postMessage({ id: ++this.last, message: asked } satisfies Numbered<Asked>);
    this.host.requestUpdate();
  }

  /** Nothing is wanted any more. */
  stop(): void {
    this.worker?.terminate();
    this.worker = null;
    this.busy = false;
    this.host.requestUpdate();
  }

  private started(): Worker {
    const worker = new Worker(trustedScript(source), { type: "module" });
    worker.addEventListener("message", ({ data }: MessageEvent<Numbered<Told>>) => this.take(data));
    worker.addEventListener("error", (event) => {
      event.preventDefault();
      if (worker !== this.worker) return;
      this.stop();
      this.refusal = "what works this out stopped on the way; try it once more";
    });
    return worker;
  }

  private take({ id, message }: Numbered<Told>): void {
    if (id !== this.last) return;
    this.busy = false;
    if (message.kind === "refused") this.refusal = message.why;
    this.told(message);
    this.host.requestUpdate();
  }
}
