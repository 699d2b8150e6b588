import type { System } from "@thirstline/spec/system";
import { isUncertain, type LifeAnswer, life, lifeDraws, lifeTrace } from "@thirstline/study";
import { lastShown } from "../life/lastShown.js";
import { targetsOf } from "../life/targetsOf.js";
import { mapPoints } from "../map/mapPoints.js";
import type { Outcome, Returned, Sent, Task } from "./messages.js";

/** Draws worked out before the worker looks whether something newer is asked for. */
const SLICE = 40;
/** How long it waits for something newer before it draws, ms: while a slider moves, draws would be thrown away. */
const CALM = 200;

/** Moments that are drawn of a life. */
const MOMENTS = 60;

let latest = 0;

addEventListener("message", ({ data }: MessageEvent<Sent>) => {
  latest = data.id;
  void work(data);
});

async function work({ id, task }: Sent): Promise<void> {
  const tell = (outcome: Outcome, done: boolean) => postMessage({ id, outcome, done } satisfies Returned);
  if (task.kind === "map") tell({ kind: "map", points: mapPoints(task.system, task.temperatures) }, true);
  else await workLife(task, tell, () => id === latest);
}

async function workLife(
  { system, draws, seed }: Extract<Task, { kind: "life" }>,
  tell: (outcome: Outcome, done: boolean) => void,
  wanted: () => boolean,
): Promise<void> {
  const answer = withTrace(system, life(system));
  const drawn = draws > 0 && answer.elements.length > 0 && isUncertain(system);
  tell({ kind: "life", answer, soil: targetsOf(system), drawn }, !drawn);
  if (!drawn) return;
  await turn(CALM);
  const lives = new Float64Array(draws);
  for (let from = 0; from < draws && wanted(); from += SLICE) {
    const to = Math.min(draws, from + SLICE);
    lives.set(lifeDraws(system, { from, to, seed }), from);
    tell({ kind: "draws", lives: lives.slice(0, to) }, to === draws);
    await turn(0);
  }
}

/** With what gauges read close enough to be drawn, as far as it is. */
function withTrace(system: System, answer: LifeAnswer): LifeAnswer {
  return { ...answer, trace: lifeTrace(system, answer, MOMENTS, lastShown(answer)) };
}

/** Messages are only heard between turns. */
function turn(after: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, after));
}
