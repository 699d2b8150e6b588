import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import type { Slice } from "@thirstline/study";
import { drawTask, type Task } from "./Task.js";

/** How many draws are handed out at a time. */
const SLICE = 50;

/** How a task is drawn. */
export interface Draws {
  readonly draws: number;
  readonly seed: number;
  /** threads; null for as many as there are processors */
  readonly workers: number | null;
  /** told after every slice how many draws are done */
  readonly progress: (done: number) => void;
}

/**
 * All draws of a task, shared out to threads. The figures are the same to the bit however many threads there are, since
 * every draw depends on its index and the seed alone.
 */
export async function drawAll(task: Task, { draws, seed, workers, progress }: Draws): Promise<Float64Array> {
  const slices = Array.from({ length: Math.ceil(draws / SLICE) }, (_, at): Slice => {
    return { from: at * SLICE, to: Math.min(draws, (at + 1) * SLICE), seed };
  });
  // Starting a thread costs what some two slices do.
  const threads = Math.min(workers ?? availableParallelism(), Math.floor(slices.length / 2));
  const done: Float64Array[] = [];
  let count = 0;
  const take = (at: number, figures: Float64Array) => {
    done[at] = figures;
    const { from, to } = slices[at] as Slice;
    count += to - from;
    progress(count);
  };
  if (threads < 2) for (const [at, slice] of slices.entries()) take(at, drawTask(task, slice));
  else await inThreads(task, slices, threads, take);
  return joined(done);
}

async function inThreads(
  task: Task,
  slices: readonly Slice[],
  threads: number,
  take: (at: number, figures: Float64Array) => void,
): Promise<void> {
  let next = 0;
  const pool = Array.from(
    { length: threads },
    () => new Worker(new URL("./drawWorker.js", import.meta.url), { workerData: task }),
  );
  const run = (worker: Worker) =>
    new Promise<void>((resolve, reject) => {
      let own = -1;
      const goOn = () => {
        own = next++;
        const slice = slices[own];
        if (slice) worker.postMessage(slice);
        else resolve();
      };
      worker.on("message", (figures: Float64Array) => {
        take(own, figures);
        goOn();
      });
      worker.on("error", reject);
      goOn();
    });
  try {
    await Promise.all(pool.map(run));
  } finally {
    await Promise.all(pool.map((worker) => worker.terminate()));
  }
}

function joined(pieces: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}
