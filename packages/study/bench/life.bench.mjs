// npm run bench: what following soil for five years costs, and ten thousand draws of it on two threads, each as a ratio within
// one run to a plain fixed-step integration of equal accuracy. Absolute times are this machine's; ratios travel.
import { Worker } from "node:worker_threads";
import { life } from "@thirstline/core";
import { factsOf } from "../dist/life/factsOf.js";
import { fiveYears, YEARS } from "./fiveYears.mjs";
import { plainLife } from "./plainLife.mjs";

const HOUR = 3600;
const DRAWS = 10_000;
const THREADS = 2;
const SLICE = 100;

/** @param {import("@thirstline/spec/system").System} system */
function givenOf(system) {
  const facts = factsOf(system);
  if (!("given" in facts)) throw new Error("the bench's system cannot be followed");
  return { ...facts.given, horizon: YEARS * facts.duty.year };
}

/** Median time of a call once warm, ms. @param {() => unknown} call @param {number} rounds */
function time(call, rounds) {
  for (let round = 0; round < rounds; round++) call();
  const times = Array.from({ length: rounds }, () => {
    const begin = performance.now();
    call();
    return performance.now() - begin;
  });
  return times.sort((a, b) => a - b)[rounds >> 1] ?? Number.NaN;
}

/**
 * What the plain way takes for one life to the same accuracy, ms. Its error falls as the square of its step, so the step that
 * comes as close as ours is found from two coarse ones, and its time from the time of a coarse step.
 * @param {ReturnType<typeof givenOf>} given
 * @param {number} exact s
 */
function plainTime(given, exact) {
  const coarse = 8 * HOUR;
  plainLife(given, 10 * coarse);
  const begin = performance.now();
  const { time: found, steps } = plainLife(given, coarse);
  const each = (performance.now() - begin) / steps;
  const finer = plainLife(given, coarse / 2).time;
  // Where within its step the limit falls decides the error of one run; the larger of the two is nearer what to expect.
  const error = Math.max(Math.abs(found - exact), 4 * Math.abs(finer - exact));
  const step = coarse * Math.sqrt(Math.min(1, CLOSE / error));
  return { milliseconds: (each * exact) / step, step, error };
}

/** A millionth of an hour, s: how closely a moment is to be found. */
const CLOSE = 1e-6 * HOUR;

/** All draws on some threads, ms. @param {import("@thirstline/spec/system").System} system */
async function drawAll(system) {
  const workers = Array.from(
    { length: THREADS },
    () => new Worker(new URL("./drawing.worker.mjs", import.meta.url), { workerData: system }),
  );
  const begin = performance.now();
  let next = 0;
  await Promise.all(
    workers.map(
      (worker) =>
        new Promise((resolve, reject) => {
          const goOn = () => {
            const from = next;
            next += SLICE;
            if (from < DRAWS) worker.postMessage({ from, to: from + SLICE, seed: 1 });
            else resolve(undefined);
          };
          worker.on("message", goOn);
          worker.on("error", reject);
          goOn();
        }),
    ),
  );
  const taken = performance.now() - begin;
  await Promise.all(workers.map((worker) => worker.terminate()));
  return taken;
}

/** @type {(value: string, width: number) => string} */
const cell = (value, width) => value.padStart(width);
console.log(`${"five years, three elements".padEnd(36)}${cell("time", 12)}${cell("plain", 14)}${cell("ratio", 10)}`);
for (const uneven of [false, true]) {
  const given = givenOf(fiveYears({ uneven }));
  const exact = life(given).end?.time ?? given.horizon;
  if (!(exact > 0.6 * given.horizon)) throw new Error("the bench's elements do not last long enough");
  const own = time(() => life(given), 300);
  const plain = plainTime(given, exact);
  const name = uneven ? "unlike duplex and a fine filter" : "like duplex and a fine filter";
  const text = [
    `${own.toFixed(2)} ms`,
    `${(plain.milliseconds / 1000).toFixed(0)} s`,
    `${(plain.milliseconds / own).toPrecision(2)}x`,
  ];
  console.log(name.padEnd(36) + cell(text[0] ?? "", 12) + cell(text[1] ?? "", 14) + cell(text[2] ?? "", 10));
  if (!uneven) {
    const drawn = await drawAll(fiveYears({ uneven }));
    const all = (DRAWS * plain.milliseconds) / THREADS;
    const drawnText = [
      `${(drawn / 1000).toFixed(1)} s`,
      `${(all / 3.6e6).toFixed(0)} h`,
      `${(all / drawn).toPrecision(2)}x`,
    ];
    const label = `${DRAWS} draws of it, ${THREADS} threads`;
    console.log(
      label.padEnd(36) + cell(drawnText[0] ?? "", 12) + cell(drawnText[1] ?? "", 14) + cell(drawnText[2] ?? "", 10),
    );
  }
}
