import type { Writable } from "node:stream";

/**
 * A stream written to without fear of its reader going away: `thirstline ... | head` ends quietly. Any other failure,
 * such as a full disk, is kept for `failure`.
 */
export class Output {
  /** what went wrong, other than a reader that had enough */
  failure: Error | null = null;
  private readonly stream: Writable;
  private closed = false;

  constructor(stream: Writable) {
    this.stream = stream;
    stream.on("error", (error: NodeJS.ErrnoException) => {
      this.closed = true;
      if (error.code !== "EPIPE") this.failure = error;
    });
  }

  /** Writes, and waits until it is on its way or the reader has gone. */
  write(text: string): Promise<void> {
    if (this.closed || text === "") return Promise.resolve();
    return new Promise((resolve) => this.stream.write(text, () => resolve()));
  }
}
