import { expect, test } from "vitest";
import type { Finding } from "./GaugeAnswer.js";
import { gaugeCautions } from "./gaugeCautions.js";
import type { GaugeFacts } from "./gaugeFacts.js";
import type { SideFit } from "./SideFit.js";

const full = { load: 1, temperature: 288, depth: 0.5 };
const factsOf = (more: object = {}, readings: readonly object[] = [full, full]) =>
  ({
    run: { readings: readings.map((reading) => ({ reading })), start: { known: true, by: "last change" }, earlier: 0 },
    suction: { names: ["A"], by: "life" },
    delivery: { names: ["fine"], by: "life" },
    built: { temperature: 280 },
    levelRange: 900,
    ...more,
  }) as unknown as GaugeFacts;
const fitOf = (demand = 1, instants = 5) =>
  ({
    weighed: { run: { instants: Array.from({ length: instants }) } },
    soil: { best: { model: { stateAt: () => ({ demand }) }, fit: { parameters: [] } } },
  }) as unknown as SideFit;
const both = { suction: fitOf(), delivery: fitOf() };
const start = { code: "start", by: "last change" };
const said = (facts = factsOf(), fits: Parameters<typeof gaugeCautions>[1] = both, findings: readonly object[] = []) =>
  gaugeCautions(facts, fits, findings as readonly Finding[]);

test("gaugeCautions(facts, fits, findings) of full readings at both sides says only what the start rests on", () => {
  expect(said()).toEqual([start]);
  const run = { readings: [], start: { known: false }, earlier: 3 };
  expect(said(factsOf({ run }))).toEqual([
    { code: "start", by: "not known" },
    { code: "earlier readings", count: 3 },
  ]);
});

test("gaugeCautions(facts, fits, findings) counts what was taken because it was not noted", () => {
  const { load: _, ...unloaded } = full;
  expect(said(factsOf({}, [unloaded, full, unloaded]))).toEqual([start, { code: "load taken", count: 2 }]);
  expect(said(factsOf({}, [{ ...unloaded, flow: 1e-4 }]))).toEqual([start]);
  const { temperature: _t, ...unmeasured } = full;
  expect(said(factsOf({}, [unmeasured]))).toEqual([start, { code: "temperature taken", count: 1, temperature: 280 }]);
  const { depth: _d, ...levelless } = full;
  expect(said(factsOf({}, [levelless]))).toEqual([start, { code: "level taken", count: 1, range: 900 }]);
  expect(said(factsOf({ levelRange: 500 }, [levelless]))).toEqual([start]);
});

test("gaugeCautions(facts, fits, findings) says where one gauge stands for several elements", () => {
  const names = ["A", "B"];
  const oneGauge = { suction: { names, by: "life" }, delivery: { names, by: "equal soil" } };
  expect(said(factsOf(oneGauge))).toEqual([
    start,
    { code: "one gauge", elements: names },
    { code: "equal soil", side: "delivery", elements: names },
  ]);
  expect(said(factsOf({ suction: { names, by: "life" } }), { ...both, suction: null })).not.toContainEqual(
    expect.objectContaining({ code: "one gauge" }),
  );
});

test("gaugeCautions(facts, fits, findings) says which side was not read, where it has elements", () => {
  const none = { names: [], by: "life" };
  expect(said(factsOf(), { suction: fitOf(), delivery: null })).toEqual([
    start,
    { code: "no feed pressure", elements: ["fine"] },
  ]);
  expect(said(factsOf({ delivery: none }), { suction: fitOf(), delivery: null })).toEqual([start]);
  expect(said(factsOf(), { suction: null, delivery: fitOf() })).toEqual([start, { code: "no vacuum readings" }]);
  expect(said(factsOf({ suction: none }), { suction: null, delivery: fitOf() })).toEqual([start]);
});

test("gaugeCautions(facts, fits, findings) says of how many readings since a jump the rest is told", () => {
  const jump = { code: "jump", from: 7, side: "suction" };
  expect(said(factsOf(), { ...both, suction: fitOf(1, 4) }, [{ code: "cold" }, jump])).toEqual([
    start,
    { code: "after the jump", from: 7, count: 4 },
  ]);
});

test("gaugeCautions(facts, fits, findings) says where file and machine are more than 15 % apart, if soil explains it all", () => {
  const apart = { code: "file and machine apart", share: expect.closeTo(-0.2, 9) };
  expect(said(factsOf(), { ...both, suction: fitOf(0.8) }, [{ code: "loading" }])).toEqual([start, apart]);
  expect(said(factsOf(), { ...both, suction: fitOf(1.15) })).toEqual([start]);
  expect(said(factsOf(), { ...both, suction: fitOf(0.8) }, [{ code: "cold" }])).toEqual([start]);
  expect(said(factsOf({ suction: { names: [], by: "life" } }), { suction: null, delivery: fitOf(0.8) })).toEqual([
    start,
    apart,
  ]);
});
