import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { demo } from "../file/demos.test-support.js";
import { Helper } from "./Helper.js";
import type { Outcome, Returned, Sent, Task } from "./messages.js";

/** A worker that does nothing until it is told to. */
class IdleWorker extends EventTarget {
  readonly sent: Sent[] = [];
  ended = false;

  postMessage(message: Sent): void {
    this.sent.push(message);
  }

  terminate(): void {
    this.ended = true;
  }

  answer(done: boolean): void {
    const id = this.sent.at(-1)?.id ?? 0;
    const data: Returned = { id, outcome: { kind: "map", points: [] }, done };
    this.dispatchEvent(Object.assign(new Event("message"), { data }));
  }
}

let workers: IdleWorker[];
let heard: (Outcome["kind"] | "started again" | "given up")[];
let helper: Helper;
const task = (temperature: number): Task => ({ kind: "map", system: demo("heron.yaml"), temperatures: [temperature] });
const asked = (worker: IdleWorker | undefined) =>
  worker?.sent.map((sent) => (sent.task.kind === "map" ? sent.task.temperatures[0] : null));

beforeEach(() => {
  vi.useFakeTimers();
  workers = [];
  heard = [];
  const start = () => {
    const worker = new IdleWorker();
    workers.push(worker);
    return worker as unknown as Worker;
  };
  helper = new Helper(start, {
    outcome: ({ kind }) => heard.push(kind),
    stopped: (again) => heard.push(again ? "started again" : "given up"),
  });
});

afterEach(() => vi.useRealTimers());

test("Helper.ask(task) lets only the last of those wait that are asked for while it works", () => {
  for (const temperature of [1, 2, 3]) helper.ask(task(temperature));
  expect(asked(workers[0])).toEqual([1]);
  workers[0]?.answer(true);
  expect(asked(workers[0])).toEqual([1, 3]);
  expect(heard).toEqual(["map"]);
});

test("Helper starts a worker again that died over its task, and gives it up when the next one dies too", () => {
  helper.ask(task(1));
  workers[0]?.dispatchEvent(new Event("error"));
  expect([workers[0]?.ended, asked(workers[1])]).toEqual([true, [1]]);
  workers[1]?.dispatchEvent(new Event("error"));
  expect(heard).toEqual(["started again", "given up"]);
  expect(workers).toHaveLength(2);
  helper.ask(task(2));
  expect(asked(workers[2])).toEqual([2]);
});

test("Helper takes a worker that falls silent for gone, and one that is done for idle", () => {
  helper.ask(task(1));
  workers[0]?.answer(true);
  vi.advanceTimersByTime(60_000);
  expect(heard).toEqual(["map"]);
  helper.ask(task(2));
  vi.advanceTimersByTime(9000);
  expect(heard).toEqual(["map", "started again"]);
  expect(asked(workers[1])).toEqual([2]);
});

test("Helper.end() lets the worker go, and nothing is heard of its task", () => {
  helper.ask(task(1));
  helper.end();
  workers[0]?.answer(true);
  expect([workers[0]?.ended, heard]).toEqual([true, []]);
});
