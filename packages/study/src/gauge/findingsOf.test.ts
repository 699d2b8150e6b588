import { expect, test } from "vitest";
import { instantsOf, newRun, proportional, sideWith, weighedOf } from "../../../../tests/support/gaugeRuns.js";
import { findingsOf } from "./findingsOf.js";
import type { Finding } from "./GaugeAnswer.js";
import { RatioTable } from "./RatioTable.js";
import type { SideFit } from "./SideFit.js";
import type { Term } from "./Term.js";

const wobble = [60, -90, 30, -30, 90, -60, 45, -75];
/** Feed pressure as soil makes it grow: 60 kPa less so much for each time the clean resistance. */
const behind = new RatioTable((demand, ratio) => 500 * demand * ratio - 60e3);

type Of = (at: number) => number;
interface More {
  readonly known?: boolean;
  readonly trend?: boolean;
  readonly temperature?: Of;
}

function sideOf(side: "suction" | "delivery", of: Of, terms: readonly Term[], more: More = {}): SideFit {
  const { known = true, trend = false, temperature = () => 288 } = more;
  const reads = wobble.map((one, at) => of(at) + one);
  const table = side === "suction" ? proportional : behind;
  const instants = instantsOf(reads, (at) => ({ temperature: temperature(at) }), table);
  const run = known ? newRun(instants) : { instants, start: { known } as const };
  return sideWith(weighedOf(run, { zeroSpread: side === "suction" ? 100 : 2000 }), terms, trend);
}
const suction = (of: Of, terms: readonly Term[] = [], more?: More) => sideOf("suction", of, terms, more);
const delivery = (of: Of, terms: readonly Term[] = [], more?: More) => sideOf("delivery", of, terms, more);
const stepAt = (at: number): Term => ({ kind: "step", at });
const findings = (before: SideFit | null, after: SideFit | null = null): Finding[] =>
  findingsOf(before, after).map(({ finding }) => finding);
/** So near a figure, as a share of it. */
const about = (value: number, share = 0.15) => expect.closeTo(value, -Math.log10(2 * share * Math.abs(value)));

const clean = () => suction(() => 1000);
const cleanBehind = () => delivery(() => -59.5e3);
/** Feed pressure that falls by 19.5 kPa from a reading on. */
const weakFrom = (from: number) => delivery((at) => (at < from ? -59.5e3 : -40e3), [stepAt(from)]);
const fifth = { row: 5, line: 6 };

test("findingsOf(suction, delivery) of level readings is nothing, and of none too", () => {
  expect(findings(clean())).toEqual([]);
  expect(findings(clean(), cleanBehind())).toEqual([]);
  expect(findings(null, null)).toEqual([]);
});

test("findingsOf(suction, delivery) of growth is soil, at the side where it is", () => {
  const grown = () => suction(() => 1000, [], { trend: true });
  const both = () => delivery(() => -59.5e3, [], { trend: true });
  expect(findingsOf(grown(), cleanBehind())).toEqual([{ finding: { code: "loading", side: "suction" }, by: "soil" }]);
  expect(findings(grown(), both())).toEqual([
    { code: "loading", side: "suction" },
    { code: "loading", side: "delivery" },
  ]);
  expect(findings(null, both())).toEqual([{ code: "loading", side: "delivery" }]);
});

test("findingsOf(suction, delivery) names a step up a jump, one from new on too much from new, and says no more of soil", () => {
  const jump = suction((at) => (at < 4 ? 1000 : 3500), [stepAt(4)], { trend: true });
  expect(findings(jump)).toEqual([{ code: "jump", side: "suction", from: fifth, by: about(2500) }]);
  const high = suction(() => 4000, [stepAt(0)], { trend: true });
  expect(findings(high)).toEqual([
    { code: "high when new", side: "suction", from: { row: 1, line: 2 }, by: about(3000) },
  ]);
});

test("findingsOf(suction, delivery) says of a find by what it was found", () => {
  const terms: readonly Term[] = [{ kind: "outlier", at: 1 }, stepAt(4)];
  const [one, ...rest] = findingsOf(
    suction((at) => (at < 4 ? 1000 : 3500) + (at === 1 ? 5000 : 0), terms),
    null,
  );
  expect(rest).toEqual([]);
  expect(one).toMatchObject({ by: "term", side: "suction", sized: { term: stepAt(4), place: 1, at: 4 } });
});

test("findingsOf(suction, delivery) names a jump behind the pump on its own side, and each side's own", () => {
  const after = delivery((at) => (at < 4 ? -59.5e3 : -57e3), [stepAt(4)]);
  const own = { code: "jump", side: "delivery", from: fifth, by: about(2500) };
  expect(findings(null, after)).toEqual([own]);
  const before = suction((at) => (at < 4 ? 1000 : 3500), [stepAt(4)]);
  expect(findings(before, after)).toEqual([{ ...own, side: "suction" }, own]);
});

test("findingsOf(suction, delivery) names cold with its coldest, and a slow fall without a place", () => {
  const odd = (at: number) => at % 2 === 1;
  const chilled = suction((at) => (odd(at) ? 2500 : 1000), [{ kind: "cold", below: 288 }], {
    temperature: (at) => (odd(at) ? 268 : 288),
  });
  expect(findings(chilled)).toEqual([{ code: "cold", side: "suction", by: about(1500), coldest: 268 }]);
  const fallen = suction((at) => 5000 - 500 * at, [{ kind: "fall" }], { known: false });
  for (const after of [null, cleanBehind()]) {
    expect(findings(fallen, after)).toEqual([{ code: "falls", side: "suction", from: null, by: about(3500) }]);
  }
});

test.each(["step", "thin"] as const)(
  "findingsOf(suction, delivery) names less vacuum low where no feed pressure tells why, and a fall where one does: %s",
  (kind) => {
    const down = () => suction((at) => (at < 4 ? 4000 : 1200), [{ kind, at: 4 }], { known: false });
    expect(findings(down())).toEqual([{ code: "low", from: fifth, by: about(2800) }]);
    expect(findings(down(), cleanBehind())).toEqual([{ code: "falls", side: "suction", from: fifth, by: about(2800) }]);
  },
);

test("findingsOf(suction, delivery) names less vacuum from new on low, whatever the feed pressure", () => {
  for (const after of [null, cleanBehind()]) {
    const low = suction(() => 300, [stepAt(0)]);
    expect(findings(low, after)).toEqual([{ code: "low", from: { row: 1, line: 2 }, by: about(700) }]);
  }
});

test("findingsOf(suction, delivery) names more feed pressure a fall of resistance behind the pump, from new on too", () => {
  const up = delivery((at) => (at < 4 ? -56e3 : -59e3), [stepAt(4)], { known: false });
  for (const before of [null, clean()]) {
    expect(findings(before, up)).toEqual([{ code: "falls", side: "delivery", from: fifth, by: about(3000) }]);
  }
  const high = sideWith(
    weighedOf(
      newRun(
        instantsOf(
          wobble.map((one) => one - 62e3),
          undefined,
          behind,
        ),
      ),
    ),
    [stepAt(0)],
  );
  expect(findings(null, high)).toEqual([
    { code: "falls", side: "delivery", from: { row: 1, line: 2 }, by: about(2500) },
  ]);
});

test("findingsOf(suction, delivery) has later steps of a side only make up for less vacuum found", () => {
  const reads: Of = (at) => (at < 2 ? 4000 : at < 5 ? 1200 : 3000) + (at === 7 ? 5000 : 0);
  const terms: readonly Term[] = [stepAt(2), stepAt(5), { kind: "cold", below: 280 }];
  const down = suction(reads, terms, { known: false, temperature: (at) => (at === 7 ? 270 : 288) });
  expect(findings(down).map(({ code }) => code)).toEqual(["low", "cold"]);
  // Steps up alone are a finding each.
  const up = suction((at) => (at < 2 ? 1000 : at < 5 ? 2500 : 6000), [stepAt(2), stepAt(5)]);
  expect(findings(up).map(({ code }) => code)).toEqual(["jump", "jump"]);
});

test("findingsOf(suction, delivery) names less vacuum and less feed pressure at one reading air or slip", () => {
  const down = suction((at) => (at < 4 ? 4000 : 1200), [stepAt(4)], { known: false });
  const [one, ...rest] = findingsOf(down, weakFrom(4));
  expect(rest).toEqual([]);
  expect(one?.finding).toEqual({ code: "air or slip", from: fifth, by: about(2800), weakBy: about(19_500) });
  expect(one).toMatchObject({
    by: "air",
    less: { at: 4, by: about(-2800) },
    weak: { term: stepAt(4), by: about(19_500) },
  });
});

test("findingsOf(suction, delivery) takes one reading apart for the same event, and two for another", () => {
  const down = () => suction((at) => (at < 4 ? 4000 : 1200), [stepAt(4)], { known: false });
  for (const from of [3, 5]) {
    expect(findings(down(), weakFrom(from))).toMatchObject([{ code: "air or slip", from: { row: from + 1 } }]);
  }
  for (const from of [2, 6]) {
    const [one] = findingsOf(down(), weakFrom(from));
    if (one?.by === "air") expect(one.less).toBe("asked");
    else expect(findings(down(), weakFrom(from)).map(({ code }) => code)).toEqual(["falls", "jump"]);
  }
});

test("findingsOf(suction, delivery) keeps what else it found besides air or slip, but for steps", () => {
  const terms: readonly Term[] = [stepAt(4), { kind: "cold", below: 280 }, stepAt(6)];
  const down = suction((at) => (at < 4 ? 4000 : at < 6 ? 1200 : 2000) + (at === 1 ? 3000 : 0), terms, {
    known: false,
    temperature: (at) => (at === 1 ? 270 : 288),
  });
  expect(findings(down, weakFrom(4)).map(({ code }) => code)).toEqual(["air or slip", "cold"]);
});

test.each([
  ["the vacuum of new elements", (at: number) => (at < 4 ? 1000 : 800), true, 200],
  ["a vacuum of nobody knows what soil", (at: number) => (at < 4 ? 3000 : 2700), false, 300],
] as const)(
  "findingsOf(suction, delivery) asks %s at the reading where feed pressure fell, though no step shows of itself",
  (_, of, known, by) => {
    const [one, ...rest] = findingsOf(suction(of, [], { known }), weakFrom(4));
    expect(rest).toEqual([]);
    expect(one).toMatchObject({ by: "air", less: "asked", weak: { at: 4 } });
    expect(one?.finding).toEqual({ code: "air or slip", from: fifth, by: about(by), weakBy: about(19_500) });
  },
);

test("findingsOf(suction, delivery) asks that the vacuum fell by 1.7 deviations", () => {
  // Readings without scatter of 100 Pa each, half of them after: a step is known to 100 x the root of 1/4 + 1/4, 71 Pa.
  const codeAt = (down: number) => {
    const instants = instantsOf(
      [0, 0, 0, 0, down, down, down, down].map((one) => 3000 - one),
      undefined,
      proportional,
    );
    const before = sideWith(weighedOf({ instants, start: { known: false } }), []);
    return findings(before, weakFrom(4))[0]?.code;
  };
  expect([codeAt(1.65 * 70.7), codeAt(1.75 * 70.7)]).toEqual(["jump", "air or slip"]);
});

test("findingsOf(suction, delivery) leaves weak delivery a jump where the vacuum did not fall with it", () => {
  expect(findings(clean(), weakFrom(4))).toEqual([{ code: "jump", side: "delivery", from: fifth, by: about(19_500) }]);
});

test("findingsOf(suction, delivery) does not take a better feed pressure for air or slip", () => {
  const down = suction((at) => (at < 4 ? 4000 : 1200), [stepAt(4)], { known: false });
  const up = delivery((at) => (at < 4 ? -56e3 : -59e3), [stepAt(4)], { known: false });
  expect(findings(down, up).map(({ code }) => code)).toEqual(["falls", "falls"]);
});

test("findingsOf(suction, delivery) names weak delivery with low vacuum from new on air or slip, by what was found", () => {
  const low = suction(() => 300, [stepAt(0)]);
  const [one, ...rest] = findingsOf(
    low,
    delivery(() => -53e3),
  );
  expect(rest).toEqual([]);
  expect(one).toMatchObject({ by: "air", less: { at: 0 }, weak: null });
  expect(one?.finding).toEqual({
    code: "air or slip",
    from: { row: 1, line: 2 },
    by: about(700),
    // 53 kPa where clean elements let 59.5 be read.
    weakBy: about(6500),
  });
});

test("findingsOf(suction, delivery) names weak delivery from new on air or slip by a demand that must be low too", () => {
  const [one, ...rest] = findingsOf(
    suction(() => 850),
    delivery(() => -53e3),
  );
  expect(rest).toEqual([]);
  expect(one).toMatchObject({ by: "air", less: "from new", weak: null });
  // Part of the 150 Pa is the gauge's zero, for all that is known beforehand.
  expect(one?.finding).toMatchObject({ code: "air or slip", from: { row: 1, line: 2 }, weakBy: about(6500) });
  if (one?.finding.code !== "air or slip") throw new Error("air");
  expect(one.finding.by).toBeGreaterThan(60);
  expect(one.finding.by).toBeLessThan(150);
});

test.each([
  ["the start is not known", suction, 850, false, -53e3],
  ["the demand is as the file says", suction, 1000, true, -53e3],
  ["delivery is as it should be", suction, 850, true, -59.5e3],
  ["delivery is less weak than 2 deviations of what the pump makes", suction, 850, true, -56e3],
] as const)("findingsOf(suction, delivery) does not speak of air from new on where %s", (_, of, read, known, feed) => {
  expect(
    findings(
      of(() => read, [], { known }),
      delivery(() => feed),
    ),
  ).toEqual([]);
});

test("findingsOf(suction, delivery) takes less flow from one reading on for less vacuum too, and for a fall before later steps", () => {
  const thin: Term = { kind: "thin", at: 4 };
  const down = suction((at) => (at < 4 ? 4000 : 1200), [thin], { known: false });
  expect(findingsOf(down, weakFrom(4))).toMatchObject([{ by: "air", less: { term: thin } }]);
  const both = suction((at) => (at < 2 ? 4000 : at < 5 ? 2500 : 1200), [stepAt(2), { kind: "thin", at: 5 }], {
    known: false,
  });
  expect(findings(both)).toMatchObject([{ code: "low", from: { row: 3 } }]);
});

test("findingsOf(suction, delivery) names steps besides a slow fall, which makes no other step an echo", () => {
  const fallen = suction((at) => 5000 - 500 * at + (at < 5 ? 0 : 3000), [{ kind: "fall" }, stepAt(5)], {
    known: false,
  });
  expect(findings(fallen).map(({ code }) => code)).toEqual(["falls", "jump"]);
});

test.each([
  ["more vacuum from a reading on", (at: number) => (at < 4 ? 1000 : 2500), 4, "jump"],
  ["less vacuum from a reading on", (at: number) => (at < 4 ? 1200 : 400), 4, "falls"],
  ["more vacuum from new on", () => 2500, 0, "high when new"],
] as const)("findingsOf(suction, delivery) does not speak of air from new on for %s", (_, of, at, code) => {
  const before = suction(of, [stepAt(at)]);
  expect(before.explained.fits[0]?.fit.parameters[0]).toBeGreaterThan(-0.7);
  expect(
    findings(
      before,
      delivery(() => -53e3),
    ).map((one) => one.code),
  ).toEqual([code]);
});
