import type { System } from "@thirstline/spec/system";
import type { Query } from "../args/Query.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import { progressLine } from "../io/progressLine.js";
import { drawAll } from "./drawAll.js";

/** The lives of several systems, drawn as a query asks for them, with progress on a terminal. */
export async function drawLives(
  systems: readonly System[],
  query: Query,
  name: string,
  io: Io,
  err: Output,
): Promise<Float64Array[]> {
  const draws = systems.length * query.draws;
  const line = progressLine(`drawing ${name}`, draws, io, err);
  const task = { question: "lives", systems, each: query.draws } as const;
  const lives = await drawAll(task, { ...query, draws, progress: line.show });
  await line.end();
  return systems.map((_, at) => lives.slice(at * query.draws, (at + 1) * query.draws));
}
