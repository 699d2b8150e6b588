// What a drawing thread runs: a slice for every message, until it is ended.
import { parentPort, workerData } from "node:worker_threads";
import type { Slice } from "@thirstline/study";
import { drawTask, type Task } from "./Task.js";

const task = workerData as Task;

parentPort?.on("message", (slice: Slice) => {
  const figures = drawTask(task, slice);
  parentPort?.postMessage(figures, [figures.buffer as ArrayBuffer]);
});
