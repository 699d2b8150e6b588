import type { Leaf, Proof, Working } from "@thirstline/study/working";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import { trustedScript } from "../model/trustedScript.js";
import type { Found, Sought } from "./messages.js";
import type { Source } from "./Question.js";
import script from "./working.worker.ts?worker&url";

/** A working that takes longer than this gives way to what is asked for next, ms. */
const PATIENCE = 250;

/** Has workings worked out beside the page. Only what was asked last counts. */
export class WorkingDesk implements ReactiveController {
  /** The last that came; it stays while the next is worked out. */
  working: Working | null = null;
  proof: Proof | null = null;
  /** What is to be said where there is none, or "". */
  trouble = "";
  busy = false;
  private readonly host: ReactiveControllerHost;
  private worker: Worker | null = null;
  private sent: { readonly id: number; readonly source: Source } | null = null;
  private waiting: { readonly source: Source; readonly leaf: Leaf } | null = null;
  private last = 0;
  private patience: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.stop();
  }

  ask(source: Source, leaf: Leaf): void {
    if (this.busy) {
      this.waiting = { source, leaf };
      return;
    }
    this.worker ??= this.started();
    const id = ++this.last;
    const same = this.sent?.source === source;
    this.worker.postMessage({ id, source: same ? null : source, leaf } satisfies Sought);
    this.sent = { id, source };
    this.busy = true;
    clearTimeout(this.patience);
    this.patience = setTimeout(() => this.giveWay(), PATIENCE);
  }

  /** Lets go of what was worked out last: what is asked next is another thing. */
  forget(): void {
    this.working = null;
    this.proof = null;
    this.trouble = "";
  }

  /** Puts an end to what is being worked out. */
  stop(): void {
    clearTimeout(this.patience);
    this.worker?.terminate();
    this.worker = null;
    this.sent = null;
    this.waiting = null;
    this.busy = false;
  }

  private started(): Worker {
    const worker = new Worker(trustedScript(script), { type: "module" });
    worker.addEventListener("message", ({ data }: MessageEvent<Found>) => this.take(data));
    worker.addEventListener("error", (event) => {
      event.preventDefault();
      if (worker !== this.worker) return;
      this.stop();
      this.trouble = "What works this out stopped on the way. Open the figure once more.";
      this.host.requestUpdate();
    });
    return worker;
  }

  private take(found: Found): void {
    if (found.id !== this.sent?.id) return;
    if (found.kind === "proof") this.proof = found.proof;
    else {
      this.busy = false;
      this.proof = null;
      this.working = found.kind === "working" ? found.working : null;
      this.trouble = found.kind === "refused" ? found.why : this.working === null ? NONE : "";
    }
    this.host.requestUpdate();
    this.next();
  }

  /** Nothing waits behind something slow: it ends with its worker. */
  private giveWay(): void {
    if (!this.busy) return;
    if (this.waiting === null) {
      this.patience = setTimeout(() => this.giveWay(), PATIENCE);
      return;
    }
    const { source, leaf } = this.waiting;
    this.stop();
    this.ask(source, leaf);
  }

  private next(): void {
    if (this.busy || this.waiting === null) return;
    const { source, leaf } = this.waiting;
    this.waiting = null;
    this.ask(source, leaf);
  }
}

const NONE = "This figure has no value here: nothing flows, or the file does not state it.";
