import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import {
  EVENLY,
  type OneGauge,
  oneGauge,
  plainBothSides,
  plainReadings,
} from "../../../../../tests/support/gaugeScenes.js";
import type { GaugeCaution, GaugeReason } from "../../gauge/GaugeAnswer.js";
import { readingsFigures } from "./readingsFigures.js";

const few = plainReadings(EVENLY.slice(0, 5));
const rest = "What the figures rest on";

function told(
  asked: OneGauge,
  { reasons = [], cautions = [] }: { reasons?: GaugeReason[]; cautions?: GaugeCaution[] },
) {
  const answer = { readings: { all: 7, used: 5 }, reasons, cautions };
  const { given } = oneGauge({ ...asked, answer });
  return readingsFigures(given).map(({ name, group, make }) => {
    const step = make();
    const { origin } = step ?? { origin: null };
    const by = origin?.by === "words" ? origin.words : origin?.by === "source" ? origin.source : origin?.by;
    return [name, group, step?.value, by];
  });
}

const both = [
  ["readings", "Readings", 7, "counted: the rows of the readings"],
  [
    "readings used",
    "Readings",
    5,
    "counted: those since the elements were new, or all where nothing is known of a change",
  ],
];

test("readingsFigures(given) count all readings and those used", () => {
  expect(told({ readings: few }, {})).toEqual(both);
});

test("readingsFigures(given) tell how many readings there are and how many it takes, where they are too few or show no trend", () => {
  const why = "Why it cannot be told";
  const lines = (count: number) => [
    ...both,
    ["readings at different times", why, count, "counted: readings of that gauge, those of one hour once"],
    ["readings needed", why, 4, "common practice, no source"],
  ];
  expect(told({ readings: few }, { reasons: [{ code: "too few readings", count: 3, needed: 4 }] })).toEqual(lines(3));
  expect(told({ readings: few }, { reasons: [{ code: "no trend", count: 6 }] })).toEqual(lines(6));
  expect(told({ readings: few }, { reasons: [{ code: "no limit" }, { code: "shut" }] })).toEqual(both);
});

test("readingsFigures(given) count what the readings that are used do not note", () => {
  const bare = few.map(({ load: _l, temperature: _t, depth: _d, ...one }, at) =>
    at < 2 ? one : { ...one, depth: 0, load: 1, temperature: 288.15 },
  );
  const asked: OneGauge = { readings: bare };
  expect(told(asked, { cautions: [{ code: "load taken", count: 2 }] })).toEqual([
    ...both,
    ["readings without a load", rest, 2, "counted"],
  ]);
  const flows = { readings: bare.map((one, at) => (at === 0 ? { ...one, flow: 5e-5 } : one)) };
  expect(told(flows, { cautions: [{ code: "load taken", count: 1 }] })[2]?.[2]).toBe(1);
  expect(told(asked, { cautions: [{ code: "temperature taken", count: 2, temperature: 288.15 }] })).toEqual([
    ...both,
    ["readings without a temperature", rest, 2, "counted"],
    ["temperature taken", rest, 288.15, "file"],
  ]);
  // The plain tank is a metre deep.
  expect(told(asked, { cautions: [{ code: "level taken", count: 2, range: 8139.5 }] })).toEqual([
    ...both,
    ["readings without a level", rest, 2, "counted"],
    ["what the level makes of the vacuum", rest, expect.closeTo(830 * 9.80665, 6), "formula"],
  ]);
});

test("readingsFigures(given) count the readings before a change", () => {
  const asked = { readings: plainReadings(EVENLY, (at) => ({ changed: at === 3 })) };
  expect(told(asked, { cautions: [{ code: "earlier readings", count: 3 }] })).toEqual([
    ...both,
    ["readings of elements changed since", rest, 3, "counted"],
  ]);
});

test("readingsFigures(given) tell how far file and machine are apart, by whichever gauge there is", () => {
  const cautions: GaugeCaution[] = [{ code: "file and machine apart", share: 0.2 }];
  const name = "demand over the file's, less one";
  for (const asked of [
    { readings: few },
    {
      system: plainBothSides as System,
      side: "delivery" as const,
      readings: few.map((one, at) => ({ ...one, feedPressure: 50e3 - 900 * at })),
    },
  ]) {
    const { explained } = oneGauge(asked);
    const { demand } = explained.fitted.model.stateAt(explained.fitted.fit.parameters);
    expect(told(asked, { cautions })[2]).toEqual([name, rest, expect.closeTo(demand - 1, 9), "formula"]);
  }
  const { given } = oneGauge({ readings: few });
  const answer = { ...given.answer, readings: { all: 0, used: 0 }, reasons: [], cautions };
  const unfitted = readingsFigures({ ...given, answer, fits: null });
  expect(unfitted.at(-1)?.make()).toBeNull();
});

test("readingsFigures(given) have no figure for what rests on no count", () => {
  const cautions: GaugeCaution[] = [
    { code: "start", by: "stated" },
    { code: "no vacuum readings" },
    { code: "one gauge", elements: ["a"] },
  ];
  expect(told({ readings: few }, { cautions })).toEqual(both);
  const { given } = oneGauge({ readings: few });
  const none = { ...given.answer, readings: { all: 5, used: 0 }, reasons: [] };
  const counted = (caution: GaugeCaution) =>
    readingsFigures({ ...given, fits: null, answer: { ...none, cautions: [caution] } })[2]?.make()?.value;
  expect(counted({ code: "load taken", count: 0 })).toBe(0);
  expect(counted({ code: "earlier readings", count: 0 })).toBe(0);
});

test("readingsFigures(given) count in plain numbers", () => {
  const answer = { readings: { all: 7, used: 5 }, reasons: [{ code: "no trend", count: 6 } as const], cautions: [] };
  const { given } = oneGauge({ readings: few, answer });
  expect(readingsFigures(given).map(({ make }) => [make()?.name, make()?.unit, make()?.kind])).toEqual(
    ["readings", "readings used", "readings at different times", "readings needed"].map((name) => [name, "1", "plain"]),
  );
});
