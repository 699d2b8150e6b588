import type { Io } from "./Io.js";
import type { Output } from "./Output.js";

/** Shows how far long work has got, on one line that is wiped in the end; on a terminal only. */
export interface ProgressLine {
  readonly show: (done: number) => void;
  readonly end: () => Promise<void>;
}

/** Work done before this is not long, ms. */
const PATIENCE = 500;

/** A line for a piece of work of so many steps. */
export function progressLine(what: string, steps: number, io: Io, err: Output): ProgressLine {
  const begun = performance.now();
  let shown = "";
  if (!io.isTerminal || io.errorIsTerminal !== true) return { show: () => undefined, end: async () => undefined };
  return {
    show: (done) => {
      const text = `${what}: ${Math.floor((100 * done) / steps)} %`;
      if (text === shown || performance.now() - begun < PATIENCE) return;
      shown = text;
      void err.write(`\r${text}`);
    },
    end: () => err.write(shown === "" ? "" : `\r${" ".repeat([...shown].length)}\r`),
  };
}
