import { expect, test } from "vitest";
import {
  EVENLY,
  METRE,
  type OneGaugeFitted,
  oneGauge,
  plainBothSides,
  plainReadings,
  troubled,
} from "../../../../../tests/support/gaugeScenes.js";
import { onePut, stepsIn, told } from "../../../../../tests/support/steps.js";
import type { Shown } from "../../gauge/findingsOf.js";
import type { Finding } from "../../gauge/GaugeAnswer.js";
import type { GaugeFits } from "../../gauge/gaugeFits.js";
import { type Sized, sizedOf } from "../../gauge/sizedOf.js";
import { termGains } from "../../gauge/termGains.js";
import { findingFigures } from "./findingFigures.js";

const from = { row: 5, line: 6 };
const group = "What the readings show";
const place = [
  ["row", "Where it stands", 5],
  ["line of the file", "Where it stands", 6],
];

/** Name, group and value of every figure of a finding. */
function figures({ given, fits }: OneGaugeFitted, shown: Shown, more: Partial<GaugeFits> = {}) {
  // A copy, so that no scene made before is remembered of it.
  const all = findingFigures({ ...given }, { ...fits, ...more }, shown);
  return all.map((one) => [one.name, one.group, one.make()?.value]);
}

/** What is found besides soil, as an answer would name it. */
function byTerm({ fit }: OneGaugeFitted, finding: (by: number) => Finding): { shown: Shown; by: number } {
  const [sized] = sizedOf(fit);
  if (!sized) throw new Error("nothing is found");
  return { shown: { finding: finding(sized.by), by: "term", side: "suction", sized }, by: sized.by };
}

test("findingFigures(given, fits, shown) of soil alone has no figures: they are those of the gauge", () => {
  const gauge = oneGauge({ readings: plainReadings(EVENLY) });
  expect(figures(gauge, { finding: { code: "loading", side: "suction" }, by: "soil" })).toEqual([]);
});

test("findingFigures(given, fits, shown) of a jump tells its size, the readings since, and where it stands", () => {
  const gauge = oneGauge(troubled.step());
  const { shown, by } = byTerm(gauge, (size) => ({ code: "jump", side: "suction", from, by: size }));
  expect(by).toBeGreaterThan(1000);
  expect(figures(gauge, shown)).toEqual([
    ["size", group, expect.closeTo(by, 6)],
    ["readings since", group, 8],
    ...place,
  ]);
  const none = { settled: { suction: null, delivery: null } };
  expect(figures(gauge, shown, none)[1]).toEqual(["readings since", group, 0]);
  const since = findingFigures(gauge.given, gauge.fits, shown)[1]?.make();
  expect(since).toMatchObject({ name: "readings since", unit: "1", origin: { words: "counted" } });
});

test("findingFigures(given, fits, shown) is worked out lazily, and said to take long", () => {
  const gauge = oneGauge(troubled.step());
  const { shown } = byTerm(gauge, (by) => ({ code: "jump", side: "suction", from, by }));
  expect(findingFigures(gauge.given, gauge.fits, shown).map(({ slow }) => slow)).toEqual([
    true,
    true,
    undefined,
    undefined,
  ]);
});

test("findingFigures(given, fits, shown) of what falls is told as a fall, above zero", () => {
  const gauge = oneGauge(troubled.fall());
  const { shown, by } = byTerm(gauge, (size) => ({ code: "falls", side: "suction", from: null, by: -size }));
  expect(by).toBeLessThan(-500);
  expect(figures(gauge, shown)).toEqual([["size", group, expect.closeTo(-by, 6)]]);
});

test("findingFigures(given, fits, shown) of what is high when new tells no readings since", () => {
  const gauge = oneGauge(troubled.step());
  const { shown, by } = byTerm(gauge, (size) => ({ code: "high when new", side: "suction", from, by: size }));
  expect(figures(gauge, shown)).toEqual([["size", group, expect.closeTo(by, 6)], ...place]);
});

test("findingFigures(given, fits, shown) of cold tells the coldest reading in words", () => {
  const gauge = oneGauge(troubled.cold());
  const { shown, by } = byTerm(gauge, (size) => ({ code: "cold", side: "suction", by: size, coldest: 278.15 }));
  expect(figures(gauge, shown)).toEqual([
    ["size", group, expect.closeTo(by, 6)],
    ["coldest reading", group, 278.15],
  ]);
  expect(findingFigures(gauge.given, gauge.fits, shown)[1]?.make()).toEqual({
    name: "coldest reading",
    value: 278.15,
    unit: "K",
    kind: "temperature",
    origin: { by: "words", words: "the coldest of the temperatures noted, or taken, at the readings", from: [] },
  });
});

test("findingFigures(given, fits, shown) of a gauge that was not fitted has nothing but its place", () => {
  const gauge = oneGauge(troubled.step());
  const { shown } = byTerm(gauge, (by) => ({ code: "jump", side: "suction", from, by }));
  expect(figures(gauge, shown, { suction: null })).toEqual(place);
});

/** Both gauges: the vacuum with something fitted to it, the feed pressure falling by 20 kPa from reading 5 on. */
function bothGauges(vacuum: OneGaugeFitted) {
  const readings = vacuum.given.readings.map((one, at) => ({ ...one, feedPressure: at >= 4 ? 40e3 : 60e3 - 100 * at }));
  const behind = oneGauge({
    system: plainBothSides,
    side: "delivery",
    readings,
    terms: [{ kind: "step", at: 4 }],
    sizes: [4],
  });
  const [weak] = sizedOf(behind.fit);
  if (!weak) throw new Error("the feed pressure does not fall");
  return { behind, weak };
}

const air = (by: number, less: Extract<Shown, { by: "air" }>["less"], weak: Sized | null): Shown => ({
  finding: { code: "air or slip", from, by, weakBy: 1 },
  by: "air",
  less,
  weak,
});

test("findingFigures(given, fits, shown) of air tells the vacuum that is missing, and the feed pressure by its own gauge", () => {
  const vacuum = oneGauge(troubled.thin());
  const { behind, weak } = bothGauges(vacuum);
  const [less] = sizedOf(vacuum.fit);
  if (!less) throw new Error("no less vacuum");
  const fits = {
    ...vacuum.fits,
    delivery: behind.fit,
    facts: { ...vacuum.fits.facts, delivery: behind.fits.facts.delivery },
  };
  const given = { ...vacuum.given, system: behind.given.system, fits };
  const told = findingFigures(given, fits, air(-less.by, less, weak)).map((one) => [
    one.name,
    one.group,
    one.make()?.value,
  ]);
  expect(less.by).toBeLessThan(-500);
  expect(weak.by).toBeGreaterThan(5000);
  expect(told).toEqual([
    ["size", group, expect.closeTo(-less.by, 6)],
    ["feed pressure short by", group, expect.closeTo(weak.by, 5)],
    ...place,
  ]);
});

test("findingFigures(given, fits, shown) of air asks the vacuum what a step there would make of it", () => {
  const vacuum = oneGauge({ readings: plainReadings(EVENLY.map((read, at) => (at >= 4 ? 0.8 * read : read))) });
  const { weak } = bothGauges(vacuum);
  const { weighed, fitted } = vacuum.explained;
  const gain = termGains(weighed, fitted)({ kind: "step", at: 4 });
  const state = fitted.model.stateAt(fitted.fit.parameters);
  const instant = weighed.run.instants[4];
  const by = (gain?.size ?? 0) * (instant?.table.slope(state.demand, state.ratioAt(instant.time)) ?? 0);
  expect(by).toBeLessThan(-100);
  expect(figures(vacuum, air(-by, "asked", weak), { delivery: null })).toEqual([
    ["size", group, expect.closeTo(-by, 6)],
    ["feed pressure short by", group, undefined],
    ...place,
  ]);
  const [size] = findingFigures(vacuum.given, vacuum.fits, air(-by, "asked", weak));
  expect(stepsIn(size?.make()).map(({ name }) => name)).toEqual(
    expect.arrayContaining([
      "step in resistance over clean",
      "what a step adds times what is missed",
      "what the fit's own parameters take of it",
      "what a step adds, squared",
      "what the fit's own parameters take of it, squared",
    ]),
  );
});

test("findingFigures(given, fits, shown) of air from new tells what the demand fitted makes of the first vacuum", () => {
  const vacuum = oneGauge({ readings: plainReadings(EVENLY.map((read) => 0.7 * read)) });
  const { demand } = vacuum.explained.fitted.model.stateAt(vacuum.explained.fitted.fit.parameters);
  expect(demand).toBeLessThan(0.995);
  const shown = air(1, "from new", null);
  // A clean element costs 1 kPa at full load.
  expect(figures(vacuum, shown)).toEqual([
    ["size", group, expect.closeTo(1000 * (1 - demand), 4)],
    ["feed pressure short by", group, undefined],
    ...place,
  ]);
  const made = findingFigures(vacuum.given, vacuum.fits, shown)[0]?.make();
  expect(onePut(made, "a", "r")).toEqual({
    name: "resistance over clean",
    value: 1,
    unit: "1",
    kind: "plain",
    origin: { by: "words", words: "put in here", from: [] },
  });
  expect(figures(vacuum, shown, { suction: null })[0]).toEqual(["size", group, undefined]);
});

test("findingFigures(given, fits, shown) of a delivery that is weak from new tells by how much all feed pressures are off", () => {
  const { behind } = bothGauges(oneGauge({ readings: plainReadings(EVENLY) }));
  const { zero } = behind.explained.fitted.model.stateAt(behind.explained.fitted.fit.parameters);
  const [, short] = figures(behind, air(1, "from new", null));
  expect(short).toEqual(["feed pressure short by", group, expect.closeTo(zero, 6)]);
});

test("findingFigures(given, fits, shown) of air from new are worked out from the file, at the demand noted and the one fitted", () => {
  const { given, fits } = oneGauge({ readings: plainReadings(EVENLY.map((read) => 0.7 * read)) });
  const made = findingFigures({ ...given }, fits, air(1, "from new", null))[0]?.make();
  expect(told(onePut(made, "a", "w", "f"))).toEqual(["demand over the noted one", 1, "1", "plain", "put in here"]);
  expect(onePut(made, "b", "w", "f").name).toBe("demand over the file's");
  for (const letter of ["a", "b"]) expect(onePut(made, letter, "a").origin.by).not.toBe("words");
  // Clean, at seven tenths of the demand.
  expect(onePut(made, "a", "a").value).toBeCloseTo(METRE + 700, 4);
});
