import type { Query } from "../args/Query.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import { progressLine } from "../io/progressLine.js";
import { drawAll } from "./drawAll.js";
import type { Task } from "./Task.js";

/** All draws of a task as a query asks for them, with progress on a terminal. */
export async function drawShown(
  task: Exclude<Task, { question: "lives" }>,
  query: Query,
  io: Io,
  err: Output,
): Promise<Float64Array> {
  const line = progressLine(`drawing ${task.system.name}`, query.draws, io, err);
  const figures = await drawAll(task, { ...query, progress: line.show });
  await line.end();
  return figures;
}
