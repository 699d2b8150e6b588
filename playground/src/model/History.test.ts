import { expect, test } from "vitest";
import { History } from "./History.js";

test("History(start) goes back and forth through what was pushed", () => {
  const history = new History("a");
  history.push("b", null, 0);
  history.push("c", null, 1);
  history.undo();
  history.undo();
  expect([history.present, history.canUndo, history.canRedo]).toEqual(["a", false, true]);
  history.redo();
  expect(history.present).toBe("b");
  history.push("d", null, 2);
  expect(history.canRedo).toBe(false);
});

test("History.push(next, merge, at) takes a drag for one step, and two drags apart for two", () => {
  const history = new History(0);
  for (let at = 1; at <= 5; at++) history.push(at, "temperature", at * 100);
  history.push(6, "temperature", 10_000);
  history.undo();
  expect(history.present).toBe(5);
  history.undo();
  expect(history.present).toBe(0);
});

test("History keeps the last 200 steps", () => {
  const history = new History(0);
  for (let step = 1; step <= 250; step++) history.push(step, null, step);
  let steps = 0;
  for (; history.canUndo; steps++) history.undo();
  expect([steps, history.present]).toEqual([200, 50]);
});
