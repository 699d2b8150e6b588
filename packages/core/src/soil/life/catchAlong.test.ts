import { expect, test } from "vitest";
import type { Stop } from "../../circuit/index.js";
import { binCount } from "../distribution/sizeEdges.js";
import { type CatchWork, catchAlong } from "./catchAlong.js";

const part = (name: string, kind = "filter") => ({ kind: "part", part: { kind, name } }) as unknown as Stop;
const bank = (...branches: Stop[][]) => ({ kind: "bank", branches }) as unknown as Stop;

/** What passes a path and what each filter frees, in the first two sizes; the second is caught half as well. */
function walked(stops: readonly Stop[], flow: number, catches: Readonly<Record<string, number>>, flows: number[] = []) {
  const sizes = (share: number) => Float64Array.from({ length: binCount }, (_, bin) => (bin === 0 ? share : share / 2));
  const names = Object.keys(catches);
  const work: CatchWork = {
    efficiencies: new Map(names.map((name) => [name, sizes(catches[name] ?? 0)])),
    freed: new Map(names.map((name) => [name, new Float64Array(binCount)])),
    bins: 2,
    spare: [],
    flows,
    at: 0,
  };
  const passing = new Float64Array(binCount).fill(1);
  catchAlong(stops, flow, passing, work);
  const freed = Object.fromEntries(names.map((name) => [name, [...(work.freed.get(name) ?? [])].slice(0, 3)]));
  return { passing: [...passing.slice(0, 3)], freed, asked: work.at };
}

test("catchAlong(stops) of filters in series catches from what the one before let through", () => {
  const { passing, freed } = walked([part("a"), part("b")], 2, { a: 0.5, b: 0.8 });
  expect(passing).toEqual([expect.closeTo(0.1, 12), expect.closeTo(0.45, 12), 1]);
  expect(freed).toEqual({
    a: [1, 0.5, 0],
    b: [expect.closeTo(0.8, 12), expect.closeTo(0.6, 12), 0],
  });
});

test("catchAlong(stops) catches in filters alone, and in those whose catch is known", () => {
  expect(walked([part("a", "line"), part("b")], 1, { a: 0.5 }).passing).toEqual([1, 1, 1]);
});

test("catchAlong(stops) frees nothing of what flows backward", () => {
  expect(walked([part("a")], -1, { a: 0.5 }).freed).toEqual({ a: [0, 0, 0] });
});

test("catchAlong(stops) mixes the branches of a bank by their flows", () => {
  const { passing, freed, asked } = walked([bank([part("a")], [part("b")])], 4, { a: 0.5, b: 1 }, [3, 1]);
  // Three quarters come half clean, one quarter clean; of the second size three quarters clean, and half clean.
  expect(passing.slice(0, 2)).toEqual([0.375, 0.6875]);
  expect(freed).toEqual({ a: [1.5, 0.75, 0], b: [1, 0.5, 0] });
  expect(asked).toBe(2);
});

test("catchAlong(stops) keeps banks within banks apart, three deep", () => {
  const inner = bank([part("c")], []);
  const middle = bank([inner], [part("d")]);
  const stops = [bank([middle], [part("e")])];
  // Outer 5 to the middle bank and 3 to e; middle 4 to the inner bank and 1 to d; inner 1 to c and 3 to a bare line.
  const { passing, freed } = walked(stops, 8, { c: 0.8, d: 0.6, e: 0.4 }, [5, 4, 1, 3, 1, 3]);
  const innerOut = (1 * 0.2 + 3 * 1) / 4;
  const middleOut = (4 * innerOut + 1 * 0.4) / 5;
  expect(passing[0]).toBeCloseTo((5 * middleOut + 3 * 0.6) / 8, 12);
  expect([freed.c?.[0], freed.d?.[0], freed.e?.[0]]).toEqual([0.8, 0.6, expect.closeTo(1.2, 12)]);
});

test("catchAlong(stops) hands each branch what came, whatever the banks inside the one before made of it", () => {
  const inner = bank([], [part("c")]);
  const { freed } = walked(
    [bank([bank([inner], [part("d")])], [part("e")])],
    3,
    { c: 0.8, d: 0.6, e: 0.4 },
    [2, 1, 0.5, 0.5, 1, 1],
  );
  expect([freed.d?.[0], freed.e?.[0]]).toEqual([0.6, 0.4]);
});
