import type { ReactiveController, ReactiveControllerHost } from "lit";
import { trustedScript } from "../model/trustedScript.js";
import source from "./choose.worker.ts?worker&url";
import type { Asked, Numbered, Told } from "./messages.js";

/**
 * Has something worked out for an element beside the page. Only what was asked last counts: what the worker is still at is
 * put an end to with the worker, so that nothing waits behind it.
 */
export class ChooseController implements ReactiveController {
  /** How far it is; null while nothing is worked out. */
  progress: { readonly words: string; readonly done: number; readonly of: number } | null = null;
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

  get busy(): boolean {
    return this.progress !== null;
  }

  hostDisconnected(): void {
    this.stop();
  }

  ask(asked: Asked): void {
    if (this.busy) this.stop();
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
    if (message.kind === "progress") this.progress = message;
    else {
      if (message.done) this.progress = null;
      if (message.kind === "refused") this.refusal = message.why;
      this.told(message);
    }
    this.host.requestUpdate();
  }
}
