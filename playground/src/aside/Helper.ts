import type { Outcome, Returned, Sent, Task } from "./messages.js";

/** A worker that says nothing for so long while it has work is taken to be gone, ms. */
const SILENCE = 8000;

/** Who is told what comes of the work. */
export interface Listener {
  outcome(outcome: Outcome): void;
  /** it stopped before it was done: whether it was started again, or has been given up for this task */
  stopped(again: boolean): void;
}

/**
 * Works things out beside the page. Only the last task asked for counts: while one is at its first outcome the next waits,
 * and of one that has given some no more is heard. A worker that dies, or falls silent, is started again with its task,
 * once; a second time it is left.
 */
export class Helper {
  private readonly start: () => Worker;
  private readonly listener: Listener;
  private worker: Worker | null = null;
  private last = 0;
  private sent: Sent | null = null;
  private heard = false;
  private waiting: Task | null = null;
  private retried = false;
  private silence: ReturnType<typeof setTimeout> | undefined;

  /** @param start makes a worker, each time one is needed */
  constructor(start: () => Worker, listener: Listener) {
    this.start = start;
    this.listener = listener;
  }

  ask(task: Task): void {
    if (this.sent !== null && !this.heard) this.waiting = task;
    else this.send(task);
  }

  /** Lets the worker go; what it was at comes to nothing. */
  end(): void {
    clearTimeout(this.silence);
    this.worker?.terminate();
    this.worker = null;
    this.sent = null;
    this.waiting = null;
  }

  private send(task: Task): void {
    this.sent = { id: ++this.last, task };
    this.heard = false;
    this.worker ??= this.started();
    this.worker.postMessage(this.sent);
    this.watch();
  }

  private started(): Worker {
    const worker = this.start();
    worker.addEventListener("message", ({ data }: MessageEvent<Returned>) => this.take(data));
    const stopped = (event: Event) => {
      event.preventDefault();
      if (worker === this.worker) this.onStopped();
    };
    worker.addEventListener("error", stopped);
    worker.addEventListener("messageerror", stopped);
    return worker;
  }

  private take({ id, outcome, done }: Returned): void {
    if (id !== this.sent?.id) return;
    this.heard = true;
    this.retried = false;
    if (done) this.sent = null;
    this.watch();
    this.listener.outcome(outcome);
    if (this.waiting === null) return;
    const next = this.waiting;
    this.waiting = null;
    this.send(next);
  }

  private watch(): void {
    clearTimeout(this.silence);
    if (this.sent !== null) this.silence = setTimeout(() => this.onStopped(), SILENCE);
  }

  private onStopped(): void {
    const task = this.waiting ?? this.sent?.task;
    const again = !this.retried;
    this.end();
    if (task === undefined) return; // it had nothing to do; the next task starts another
    this.retried = again;
    this.listener.stopped(again);
    if (again) this.send(task);
  }
}
