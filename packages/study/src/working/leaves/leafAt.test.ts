import { expect, test } from "vitest";
import type { Leaf } from "./Leaf.js";
import { leafAt } from "./leafAt.js";

type Path = readonly (string | number)[];
const si = (value: number | readonly number[]) => ({ value, unit: "1" });

test.each<[code: string, field: string, figure: string]>([
  ["transitional", "reynolds", "Reynolds number in left hose"],
  ["constant K in laminar flow", "reynolds", "Reynolds number in left hose"],
  ["orifice at low Reynolds number", "reynolds", "Reynolds number in left hose"],
  ["estimated medium", "factor", "estimate factor of left hose"],
  ["altitude", "altitude", "altitude"],
  ["altitude", "ambientPressure", "air pressure"],
  ["vapour margin", "margin", "vapour margin"],
  ["low point in the path", "pressure", "lowest pressure"],
  ["freed air", "share", "air freed under suction"],
  ["freed air", "vacuum", "vacuum now"],
  ["tank runs backwards", "flow", "flow back into left tank"],
  ["past terminal drop", "drop", "drop of left hose as it is, at the file's own temperature"],
  ["past terminal drop", "terminalDrop", "terminal drop of left hose"],
  ["below cloud point", "temperature", "temperature"],
  ["below cloud point", "cloudPoint", "cloud point"],
  ["below cloud point", "coldFilterPluggingPoint", "CFPP"],
  ["cloud point not known", "temperature", "temperature"],
  ["cloud point not known", "limit", "highest cloud point of its kind"],
  ["fuel out of range", "temperature", "temperature"],
  ["fuel out of range", "from", "coldest fuel data"],
  ["fuel out of range", "to", "warmest fuel data"],
  ["below range", "temperature", "temperature"],
  ["below range", "from", "coldest fuel data"],
  ["above range", "temperature", "temperature"],
  ["above range", "to", "warmest fuel data"],
  ["beyond measured points", "temperature", "temperature"],
  ["beyond measured points", "from", "coldest measured viscosity"],
  ["beyond measured points", "to", "warmest measured viscosity"],
  ["part outside range", "temperature", "temperature"],
  ["part outside range", "share", "share of left hose"],
  ["part outside range", "from", "coldest data of left hose"],
  ["part outside range", "to", "warmest data of left hose"],
  ["water can freeze", "temperature", "temperature"],
])('leafAt("check", answer, path) of a remark "%s" knows its %s as "%s"', (code, field, figure) => {
  const remark = { code, part: "left hose", tank: "left tank", from: si(233) };
  const point = { temperature: si(270), reasons: [remark], cautions: [remark, { fuel: remark }] };
  for (const place of [
    ["reasons", 0],
    ["cautions", 0],
    ["cautions", 1, "fuel"],
  ]) {
    const path = ["points", 0, ...place, field];
    expect(leafAt("check", { points: [point] }, path)).toStrictEqual({ figure, asked: { temperature: 270 } });
  }
});

test("leafAt(question, answer, path) is null for a field that a remark does not have, and for no figure at all", () => {
  const answer = { points: [{ temperature: si(270), reasons: [{ code: "altitude" }, { code: "unheard of" }] }] };
  const of = (...path: Path) => leafAt("check", answer, path);
  expect(of("points", 0, "reasons", 0, "altitude")).not.toBeNull();
  expect(of("points", 0, "reasons", 0, "reynolds")).toBeNull();
  expect(of("points", 0, "reasons", 1, "altitude")).toBeNull();
  expect(of("points", 0, "colour")).toBeNull();
  expect(of("points", 0, "vacuum")).toBeNull();
  expect(of("points", 0, "vacuum", "middle", "more")).toBeNull();
  // A known place of what this answer has not.
  expect(of("points", 1, "vacuum", "middle")).toBeNull();
  expect(leafAt("check", { points: null }, ["points", 0, "vacuum", "middle"])).toBeNull();
  expect(leafAt("check", { points: "none" }, ["points", 0, "vacuum", "middle"])).toBeNull();
});

test("leafAt(question, answer, path) says of fuel above its data that nothing bounds it below", () => {
  const from = (value: number) => ({ points: [{ reasons: [{ code: "fuel out of range", from: si(value) }] }] });
  const path = ["points", 0, "reasons", 0, "from"];
  expect(leafAt("check", from(0), path)?.figure).toBe("no bound below");
  expect(leafAt("check", from(1e-9), path)?.figure).toBe("coldest fuel data");
});

const check = {
  points: [
    {
      temperature: si(285),
      demand: { total: si(2e-5) },
      suction: [{ name: "hose", drop: si(1) }],
      delivery: [{ name: "fine filter" }],
      asTheyAre: { suction: [{ name: "screen" }], delivery: [{ name: "fine filter" }] },
    },
  ],
};

test.each<[path: string, figure: string]>([
  ["vacuum.low", "vacuum, low end"],
  ["vacuum.middle", "vacuum"],
  ["vacuum.high", "vacuum, high end"],
  ["ceilings.atChange.flow.low", "ceiling at change, low end"],
  ["spread.vacuum.low", "vacuum, 10 % of draws"],
  ["spread.vacuum.middle", "vacuum, 50 % of draws"],
  ["spread.vacuum.high", "vacuum, 90 % of draws"],
  ["spread.draws", "draws"],
  ["suction.0.depth", "depth of hose"],
  ["suction.0.flow", "flow in hose"],
  ["suction.0.drop", "drop of hose"],
  ["suction.0.share", "share of hose"],
  ["suction.0.pressure", "pressure behind hose"],
  ["suction.0.reynolds", "Reynolds number in hose"],
  ["delivery.0.drop", "drop of fine filter"],
  ["asTheyAre.suction.0.drop", "drop of screen as it is"],
  ["asTheyAre.delivery.0.share", "share of fine filter as it is"],
])('leafAt("check", answer, points.0.%s) is "%s"', (place, figure) => {
  const answer = structuredClone(check) as Record<string, unknown>;
  // What is not stated above is put in where the path leads.
  let node = (answer.points as Record<string, unknown>[])[0] as Record<string, unknown>;
  for (const step of place.split(".").slice(0, -1)) {
    node[step] ??= {};
    node = node[step] as Record<string, unknown>;
  }
  const path = ["points", 0, ...place.split(".").map((step) => (step === "0" ? 0 : step))];
  expect(leafAt("check", answer, path)).toStrictEqual({ figure, asked: { temperature: 285 } });
  expect(leafAt("check", answer, path, { ownTemperature: true })).toStrictEqual({ figure, asked: {} });
});

test('leafAt("curve", answer, path) of a column is asked at the demand it stands at, and of no column at none', () => {
  const columns = { middle: si([1, 2, 3]), low: si([1, 2, 3]) };
  const point = { temperature: si(278), demand: si([0, 1e-5, 2e-5]), clean: { vacuum: columns }, duty: { vacuum: {} } };
  const answer = { points: [point], atChange: { temperature: si(268) } };
  const of = (path: Path, options?: { ownTemperature: boolean }) => leafAt("curve", answer, path, options);
  const middle = ["points", 0, "clean", "vacuum", "middle", 2];
  expect(of(middle)).toStrictEqual({ figure: "vacuum", asked: { temperature: 278, at: 2e-5 } });
  expect(of(middle, { ownTemperature: true })).toStrictEqual({ figure: "vacuum", asked: { at: 2e-5 } });
  expect(of(["points", 0, "clean", "vacuum", "low", 0])).toStrictEqual({
    figure: "vacuum, low end",
    asked: { temperature: 278, at: 0 },
  });
  expect(of(["points", 0, "demand", 1])).toStrictEqual({
    figure: "demand at a point of the curve",
    asked: { temperature: 278, at: 1e-5 },
  });
  expect(of(["points", 0, "duty", "vacuum", "middle"])).toStrictEqual({
    figure: "vacuum",
    asked: { temperature: 278 },
  });
  // A figure that stands in no point is asked with nothing.
  expect(of(["atChange", "temperature"])).toStrictEqual({ figure: "temperature", asked: {} });
});

const life = {
  elements: [{ name: "fine filter" }],
  reasons: [{}],
  partial: [{ element: "prefilter A", shares: [{ element: "prefilter B" }] }],
  cleanliness: [{ place: "after fine filter", counts: { at4: si(1) } }],
  water: { stages: [{ element: "bowl" }] },
  trace: { time: si([0, 10, 20]), vacuum: si([1, 2, 3]) },
  cautions: [{ season: "winter", element: "fine filter", caution: { size: si(4.0000001e-6) } }],
};

test.each<[path: Path, figure: string]>([
  [["elements", 0, "soilAtStart"], "soil at start on fine filter"],
  [["elements", 0, "soil"], "soil on fine filter"],
  [["elements", 0, "water"], "water in fine filter"],
  [["elements", 0, "restriction"], "resistance over clean of fine filter"],
  [["elements", 0, "dropClean"], "drop of fine filter, clean"],
  [["elements", 0, "drop"], "drop of fine filter at the end"],
  [["elements", 0, "share"], "share of the rise of fine filter"],
  [["partial", 0, "time"], "next end with prefilter A alone new"],
  [["partial", 0, "shares", 0, "before"], "share of flow of prefilter B before prefilter A is changed"],
  [["partial", 0, "shares", 0, "after"], "share of flow of prefilter B with prefilter A new"],
  [["cleanliness", 0, "solids"], "solids after fine filter"],
  [["cleanliness", 0, "counts", "at4"], "particles from 4 µm after fine filter"],
  [["cleanliness", 0, "counts", "at6"], "particles from 6 µm after fine filter"],
  [["cleanliness", 0, "counts", "at14"], "particles from 14 µm after fine filter"],
  [["water", "stages", 0, "efficiency"], "share of free water kept by bowl"],
  [["water", "stages", 0, "rate"], "water kept in a time by bowl"],
  [["water", "stages", 0, "drainEvery"], "draining of bowl"],
  [["water", "stages", 0, "shutAfter"], "shutting of bowl by water"],
  [["cautions", 0, "temperature"], "temperature of winter"],
  [["cautions", 0, "caution", "size"], "size of the beta of fine filter at 4 µm"],
  [["cautions", 0, "caution", "stated"], "beta stated of fine filter at 4 µm"],
  [["cautions", 0, "caution", "held"], "beta held of fine filter at 4 µm"],
  [["spread", "low"], "life, 10 % of draws"],
  [["end", "time"], "end of life"],
  [["change", "years"], "years of duty at the change"],
])('leafAt("life", answer, %j) is "%s"', (path, figure) => {
  const answer = { ...life, spread: {}, end: {}, change: {} };
  expect(leafAt("life", answer, path)).toStrictEqual({ figure, asked: {} });
});

test('leafAt("life", answer, path) of the trace is asked at its moment', () => {
  expect(leafAt("life", life, ["trace", "time", 0])).toStrictEqual({
    figure: "running time at a moment",
    asked: { moment: 0 },
  });
  expect(leafAt("life", life, ["trace", "vacuum", 2])).toStrictEqual({
    figure: "vacuum at a moment",
    asked: { moment: 2 },
  });
  expect(leafAt("life", life, ["trace", "vacuum"])).toStrictEqual({ figure: "vacuum at a moment", asked: {} });
});

const card = {
  temperature: si(293),
  elements: [{ name: "fine filter" }],
  volumes: {},
  priming: { strokes: {} },
  duplex: { vacuum: {} },
  water: {
    stages: [
      { element: "bowl", kind: "bowl" },
      { element: "coalescer", kind: "element" },
    ],
    reasons: [{}],
  },
  readings: [
    { load: si(1), demand: si(3e-5), vacuum: {}, feedPressure: {} },
    { load: si(0.999), demand: si(2e-5), vacuum: {}, feedPressure: {} },
  ],
  check: { temperature: si(293), reasons: [{ code: "altitude" }], vacuumLimits: {} },
};

test.each<[path: Path, figure: string, more?: Partial<Leaf>]>([
  [["temperature"], "temperature on the day"],
  [["elements", 0, "head"], "head over fine filter"],
  [["elements", 0, "body"], "body of fine filter"],
  [["elements", 0, "bowl"], "bowl of fine filter"],
  [["duplex", "vacuum", "middle"], "vacuum now", { of: "duplex" }],
  [["priming", "strokes", "most"], "most strokes"],
  [["water", "stages", 0, "every"], "draining of bowl"],
  [["water", "stages", 1, "every"], "shutting of coalescer by water"],
  [["readings", 0, "load"], "full load"],
  [["readings", 1, "load"], "lowest load", { asked: { demand: 2e-5 } }],
  [["readings", 0, "demand"], "demand"],
  [["readings", 1, "demand"], "demand at the lowest load", { asked: { demand: 2e-5 } }],
  [["readings", 0, "vacuum", "high"], "vacuum now, high end"],
  [["readings", 1, "vacuum", "low"], "vacuum now, low end", { asked: { demand: 2e-5 } }],
  [["check", "reasons", 0, "altitude"], "altitude"],
  [["check", "vacuumLimits", "atChange"], "limit at change"],
])('leafAt("card", answer, %j) is "%s"', (path, figure, more = {}) => {
  expect(leafAt("card", card, path)).toStrictEqual({ figure, asked: {}, of: "fitted", ...more });
});

const warm = { binds: null, temperature: si(303), vacuum: {}, reasons: [{ code: "vapour margin" }] };
const swap = {
  interval: {},
  now: { warm, cold: { ...warm, temperature: si(263) }, starves: { temperature: si(250) }, spread: {} },
  changed: { warm, cold: warm, starves: { temperature: si(250) }, spread: {} },
  reasons: [{ point: { ...warm, temperature: si(273) } }, { chance: si(0.1) }],
};

test.each<[path: Path, leaf: Leaf]>([
  [["interval", "time"], { figure: "service interval", asked: {}, of: "now" }],
  [["now", "warm", "vacuum", "low"], { figure: "vacuum, low end", asked: { temperature: 303 }, of: "now" }],
  [["now", "cold", "temperature"], { figure: "temperature", asked: { temperature: 263 }, of: "now" }],
  [["changed", "warm", "vacuum", "middle"], { figure: "vacuum", asked: { temperature: 303 }, of: "changed" }],
  [["changed", "starves", "temperature"], { figure: "starves below", asked: {}, of: "changed" }],
  [["changed", "spread", "high"], { figure: "life, 90 % of draws", asked: {}, of: "changed" }],
  [
    ["reasons", 0, "point", "inHand", "low"],
    { figure: "in hand, low end", asked: { temperature: 273 }, of: "changed" },
  ],
  [
    ["reasons", 0, "point", "reasons", 0, "margin"],
    {
      figure: "vapour margin",
      asked: { temperature: 273 },
      of: "changed",
    },
  ],
  [
    ["reasons", 1, "chance"],
    {
      figure: "chance of an end before the service interval",
      asked: {},
      of: "changed",
    },
  ],
])('leafAt("swap", answer, %j) tells the side and the temperature of its check', (path, leaf) => {
  const answer = structuredClone(swap);
  Object.assign(answer.reasons[0]?.point ?? {}, { inHand: {} });
  expect(leafAt("swap", answer, path)).toStrictEqual(leaf);
});

const result = (temperature: number) => ({ overClean: null, temperature: si(temperature), changes: [{}, {}] });
const remedy = {
  worst: { binds: "vacuum clean", temperature: si(263) },
  demand: si(2e-5),
  now: result(264),
  single: [result(265), result(266)],
  pairs: [result(267)],
};

test.each<[path: Path, figure: string, temperature: number, of: string]>([
  [["worst", "temperature"], "temperature", 263, "now"],
  [["demand"], "demand", 263, "now"],
  [["now", "inHand"], "in hand, low end", 264, "now"],
  [["single", 1, "ceiling"], "ceiling at change, low end", 266, "single 1"],
  [["single", 0, "changes", 0, "from"], "change 1, from", 265, "single 0"],
  [["pairs", 0, "changes", 1, "by"], "change 2, by", 267, "pairs 0"],
])('leafAt("remedy", answer, %j) is "%s" at %s K of %s', (path, figure, temperature, of) => {
  expect(leafAt("remedy", remedy, path)).toStrictEqual({ figure, asked: { temperature }, of });
});

const arrangement = (count: number) => ({ stages: [{ count: si(count) }, { count: si(1) }], spread: {} });
const size = {
  temperatures: [si(263), si(268)],
  asked: { rating: {} },
  arrangements: [arrangement(1), arrangement(2), arrangement(3)],
  best: { cheapest: arrangement(3), smallest: arrangement(1) },
  failed: [
    { count: si(4), example: arrangement(1) },
    { count: si(5), example: arrangement(2) },
  ],
  nearest: arrangement(4),
  effort: {},
  reasons: [{}],
};

test.each<[path: Path, figure: string, of: string]>([
  [["temperatures", 1], "temperature 2 searched at", "search"],
  [["candidates"], "candidates", "search"],
  [["asked", "rating", "beta"], "beta asked", "search"],
  [["effort", "lives"], "lives followed to the end", "search"],
  [["reasons", 0, "temperature"], "temperature not judged", "search"],
  [["arrangements", 1, "stages", 0, "count"], "elements of stage 1", "arrangement 1"],
  [["arrangements", 2, "spread", "middle"], "life, 50 % of draws", "arrangement 2"],
  [["best", "cheapest", "yearlyCost"], "cost of a year", "arrangement 2"],
  [["best", "smallest", "stages", 1, "count"], "elements of stage 2", "arrangement 0"],
  [["failed", 1, "count"], "arrangements that fail by this", "failed 1"],
  [["failed", 1, "example", "bore"], "bore of the lines", "failed 1"],
  [["nearest", "inHand"], "least in hand", "nearest"],
])('leafAt("size", answer, %j) is "%s" of %s', (path, figure, of) => {
  expect(leafAt("size", size, path)).toStrictEqual({ figure, asked: {}, of });
});

const fleet = {
  entries: [
    {},
    {
      hours: {},
      distance: {},
      due: {},
      elements: [{ element: "fine filter", limits: [{ by: "hours" }, { by: "restriction" }] }],
      cautions: [{ code: "gauge at the change limit" }, { code: "gauge over the clean limit", reasons: [{}] }],
    },
  ],
  parts: [{}, {}],
};

test.each<[path: Path, figure: string, of: string]>([
  [["within"], "days looked ahead", "yard"],
  [["entries", 1, "due", "days"], "days until it is due", "machine 1"],
  [["entries", 1, "hours", "rate"], "rate of use", "machine 1"],
  [["entries", 1, "distance", "least"], "slowest rate of travel", "machine 1"],
  [["entries", 1, "distance", "most"], "fastest rate of travel", "machine 1"],
  [["entries", 1, "elements", 0, "running"], "running time of fine filter", "machine 1"],
  [["entries", 1, "elements", 0, "limits", 1, "after"], "allowed for fine filter by restriction", "machine 1"],
  [["entries", 1, "cautions", 0, "limit"], "limit at change", "machine 1"],
  [["entries", 1, "cautions", 1, "limit"], "clean limit", "machine 1"],
  [["entries", 1, "cautions", 1, "reasons", 0, "late"], "late end", "machine 1"],
  [["parts", 1, "delivery"], "delivery time", "part 1"],
])('leafAt("fleet", answer, %j) is "%s" of %s', (path, figure, of) => {
  expect(leafAt("fleet", fleet, path)).toStrictEqual({ figure, asked: {}, of });
});

const gauge = {
  left: {},
  leftWithout: {},
  readings: {},
  reasons: [{ middle: si(1) }],
  outliers: [{}, {}],
  findings: [{ code: "air or slip" }, { code: "jump", from: {} }, { code: "jump" }],
  cautions: [
    { code: "after the jump", from: {} },
    { code: "earlier readings" },
    { code: "load taken" },
    { code: "temperature taken" },
    { code: "level taken" },
    { code: "after the jump" },
    { code: "unheard of" },
  ],
  sides: [
    { side: "suction", elements: [{ name: "screen", ratio: {} }], laws: [{ law: "cake" }], trace: {} },
    { side: "delivery", trace: { read: si([1, 2, 3]) } },
  ],
};

test.each<[path: Path, figure: string, of: string]>([
  [["findings", 0, "by"], "size", "finding 0"],
  [["findings", 1, "from", "row"], "row", "finding 1"],
  [["outliers", 1, "deviations"], "standard deviations off", "outlier 1"],
  [["reasons", 0, "count"], "readings at different times", "readings"],
  [["reasons", 0, "low"], "running time left, low end", "left"],
  [["reasons", 0, "middle"], "running time left", "left"],
  [["reasons", 0, "high"], "running time left, high end", "left"],
  [["cautions", 1, "count"], "readings of elements changed since", "readings"],
  [["cautions", 2, "count"], "readings without a load", "readings"],
  [["cautions", 3, "count"], "readings without a temperature", "readings"],
  [["cautions", 4, "count"], "readings without a level", "readings"],
  // The first jump is the second finding, and the second the third.
  [["cautions", 0, "count"], "readings since", "finding 1"],
  [["cautions", 0, "from", "line"], "line of the file", "finding 1"],
  [["cautions", 5, "count"], "readings since", "finding 2"],
  [["left", "hourMeter"], "hour meter at the limit", "left"],
  [["leftWithout", "high"], "running time left, high end", "left without"],
  [["sides", 0, "elements", 0, "ratio", "middle"], "resistance over clean of screen", "suction"],
  [["sides", 0, "elements", 0, "dropClean"], "drop of screen, clean", "suction"],
  [["sides", 0, "elements", 0, "drop"], "drop of screen", "suction"],
  [["sides", 0, "elements", 0, "roomUsed"], "room used up of screen", "suction"],
  [["sides", 0, "laws", 0, "mix"], "mix of cake", "suction"],
  [["sides", 0, "laws", 0, "weight"], "weight of cake", "suction"],
  [["sides", 1, "trace", "read", 2], "pressure read at reading 3", "delivery"],
  [["readings", "used"], "readings used", "readings"],
])('leafAt("gauge", answer, %j) is "%s" of %s', (path, figure, of) => {
  expect(leafAt("gauge", gauge, path)).toStrictEqual({ figure, asked: {}, of });
});

test('leafAt("gauge", answer, path) is null for the count of a caution that counts nothing', () => {
  expect(leafAt("gauge", gauge, ["cautions", 6, "count"])).toBeNull();
});

test("leafAt(question, answer, path) takes a figure's own place only, and nothing inside it or beside it", () => {
  expect(leafAt("remedy", { demand: { more: si(1) } }, ["demand", "more"])).toBeNull();
  expect(leafAt("remedy", { demand: si(1) }, ["demand"])).not.toBeNull();
  // The temperature of something that is no point of a check is not what its figures are asked with.
  const answer = { elements: [{ name: "fine filter", temperature: si(300) }] };
  expect(leafAt("life", answer, ["elements", 0, "soil"])).toStrictEqual({ figure: "soil on fine filter", asked: {} });
});
