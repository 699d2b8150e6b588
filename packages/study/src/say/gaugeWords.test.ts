import { describe, expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import type { GaugeAnswer, GaugeCaution, HoursLeft, Outlier, SideAnswer } from "../gauge/GaugeAnswer.js";
import { gaugeSentence } from "./gaugeSentence.js";
import { gaugeCautionWords, outlierWords, withoutWords } from "./gaugeWords.js";

const HOUR = 3600;
const hoursLeft = (low: number, middle: number, high: number) =>
  ({
    low: low * HOUR,
    middle: middle * HOUR,
    high: high * HOUR,
    by: { kind: "limit", limit: "vacuum at change" },
    pointTemperature: 263.15,
  }) as HoursLeft;
const answer = {
  system: "Heron",
  pump: "fixed",
  verdict: "filter",
  findings: [],
  reasons: [],
  cautions: [],
  outliers: [],
  sides: [],
  left: null,
  leftWithout: null,
} as unknown as GaugeAnswer;

describe("outlierWords(outlier, units) says what was read, what was expected and how far off that is", () => {
  const outlier: Outlier = { row: 4, line: 5, side: "suction", read: 21e3, expected: 14e3, deviations: 4.26 };
  const rest = "times the usual scatter. It is counted all the same; read it again.";
  test.each([
    [
      {},
      `reading 4 (line 5): a vacuum of {pressure read|21.0 kPa} where the others let expect {pressure expected|14.0 kPa}, off by {standard deviations off|4.3} ${rest}`,
    ],
    [
      { side: "delivery", line: null, deviations: -4.26 },
      `reading 4: a feed pressure of {pressure read|21.0 kPa} where the others let expect {pressure expected|14.0 kPa}, off by {standard deviations off|4.3} ${rest}`,
    ],
  ] as const)("%j", (more, words) => expect(marked(outlierWords({ ...outlier, ...more }, "metric"))).toBe(words));

  test("a vacuum in inHg, and a feed pressure in psi", () => {
    expect(marked(outlierWords(outlier, "us"))).toContain("{pressure read|6.2 inHg}");
    expect(marked(outlierWords({ ...outlier, side: "delivery" }, "us"))).toContain("{pressure read|3.0 psi}");
  });
});

describe("withoutWords(answer, units)", () => {
  const said = (left: HoursLeft | null, leftWithout: HoursLeft | null) => {
    const words = withoutWords({ ...answer, left, leftWithout }, "metric");
    return words && marked(words);
  };
  const same = "Without what stands off the hours left come out the same.";

  test("is null where no reading stands off, or hours cannot be told", () => {
    expect(said(hoursLeft(50, 80, 120), null)).toBeNull();
    expect(said(null, hoursLeft(50, 80, 120))).toBeNull();
  });

  test("says the hours without them, by names of their own, where they are more than a tenth apart", () => {
    expect(said(hoursLeft(50, 80, 120), hoursLeft(70, 100, 140))).toBe(
      "Without what stands off: about {left without: running time left|100 h} left, nine times in ten {left without: running time left, low end|70 h} to {left without: running time left, high end|140 h}.",
    );
    // A tenth of the longer of both, whichever that is: 90 and 100 h are just that.
    expect(said(hoursLeft(50, 90, 120), hoursLeft(50, 100, 120))).toBe(same);
    expect(said(hoursLeft(50, 100, 120), hoursLeft(50, 90, 120))).toBe(same);
    expect(said(hoursLeft(50, 89, 120), hoursLeft(50, 100, 120))).not.toBe(same);
    expect(said(hoursLeft(50, 100, 120), hoursLeft(50, 89, 120))).not.toBe(same);
  });

  test("says them too where what stands off has made the hours wider by a fifth, and not where it has made them closer", () => {
    expect(said(hoursLeft(40, 100, 100), hoursLeft(50, 100, 100))).toBe(same);
    expect(said(hoursLeft(39, 100, 100), hoursLeft(50, 100, 100))).not.toBe(same);
    expect(said(hoursLeft(90, 100, 110), hoursLeft(20, 100, 180))).toBe(same);
  });
});

const side = {
  side: "suction",
  gaugeError: { value: 300, by: "common practice" },
  scatter: 800,
  elements: [{ name: "A" }],
} as unknown as SideAnswer;
const cautions = (more: Partial<GaugeAnswer>, units: "metric" | "us" = "metric") =>
  gaugeCautionWords({ ...answer, ...more }, units).map(marked);

describe("gaugeCautionWords(answer, units) says what the figures rest on", () => {
  const off = "with load and temperature as noted, and by their own scatter, readings stand ±";

  test("how well a gauge is read, and how far its readings stand off", () => {
    expect(cautions({ sides: [side] })).toEqual([
      `the gauge is taken to be read to ±{suction: error of the gauge|0.3 kPa} (common practice, no source); ${off}{suction: scatter of a reading|0.8 kPa} off`,
    ]);
    const stated = { ...side, gaugeError: { value: 300, by: "stated" as const }, elements: [] };
    expect(cautions({ sides: [stated] })).toEqual([
      "the gauge is taken to be read to ±{suction: error of the gauge|0.3 kPa} (as stated)",
    ]);
  });

  test("of two gauges which, each in its own unit", () => {
    const delivery = {
      ...side,
      side: "delivery" as const,
      gaugeError: { value: 3447, by: "stated" as const },
      scatter: 6895,
    };
    expect(
      cautions({ sides: [{ ...side, gaugeError: { value: 1693, by: "stated" }, scatter: 3386 }, delivery] }, "us"),
    ).toEqual([
      `the vacuum gauge is taken to be read to ±{suction: error of the gauge|0.5 inHg} (as stated); ${off}{suction: scatter of a reading|1.0 inHg} off`,
      `the feed gauge is taken to be read to ±{delivery: error of the gauge|0.5 psi} (as stated); ${off}{delivery: scatter of a reading|1.0 psi} off`,
    ]);
  });

  test("hours left last, that they are for going on as before", () => {
    expect(cautions({ left: hoursLeft(50, 80, 120), cautions: [{ code: "no vacuum readings" }] })).toEqual([
      "no vacuum is noted, so the elements before the pump are taken as the file has them",
      "hours left are for going on as before: dirtier fuel or harder work shortens them; the manual's interval stays the rule",
    ]);
    expect(cautions({})).toEqual([]);
  });

  const cases: readonly (readonly [GaugeCaution, string])[] = [
    [
      { code: "equal soil", side: "suction", elements: ["A", "B"] },
      "what A and B catch is not known well enough to tell their shares, so all are taken to grow alike",
    ],
    [
      { code: "one gauge", elements: ["A", "B"] },
      "one gauge sees A and B together; their shares are as the file predicts, not as read",
    ],
    [
      { code: "start", by: "change in the readings" },
      "the elements are taken as new at the change noted in the readings, all of them",
    ],
    [{ code: "start", by: "last change" }, "the elements are taken as new at the last change the file states"],
    [{ code: "start", by: "stated" }, "the soil the file states is taken as that of the first reading"],
    [
      { code: "start", by: "not known" },
      "when the elements were new is not known, so how much soil they had at the first reading is part of what is fitted; note changes",
    ],
    [
      { code: "earlier readings", count: 1 },
      "{readings: readings of elements changed since|1} reading from before the last change is left out",
    ],
    [
      { code: "earlier readings", count: 2 },
      "{readings: readings of elements changed since|2} readings from before the last change are left out",
    ],
    [
      { code: "load taken", count: 2 },
      "{readings: readings without a load|2} readings without a load: full load is taken, give or take 15 %",
    ],
    [
      { code: "temperature taken", count: 1, temperature: 288.15 },
      "{readings: readings without a temperature|1} reading without a fuel temperature: the file's {readings: temperature taken|15 °C} is taken, give or take 6 K",
    ],
    [
      { code: "level taken", count: 2, range: 1500 },
      "{readings: readings without a level|2} readings without the tank's level: half-way is taken, and from full to low the gauge moves by {readings: what the level makes of the vacuum|1.5 kPa}",
    ],
    [
      { code: "after the jump", from: { row: 4, line: null }, count: 1 },
      "since reading 4 only 1 reading counts for soil and hours",
    ],
    [
      { code: "after the jump", from: { row: 4, line: 5 }, count: 3 },
      "since reading 4 (line 5) only 3 readings count for soil and hours",
    ],
    [
      { code: "no feed pressure", elements: ["C"] },
      "C cannot be seen by a vacuum gauge; note the feed pressure beside it",
    ],
    [
      { code: "file and machine apart", share: 0.3 },
      "the machine draws {readings: demand over the file's, less one|30 %} more than the file lets expect; check its demand, lines and elements against the machine",
    ],
    [
      { code: "file and machine apart", share: -0.3 },
      "the machine draws {readings: demand over the file's, less one|30 %} less than the file lets expect; check its demand, lines and elements against the machine",
    ],
  ];
  test.each(cases)("%j", (caution, words) => expect(cautions({ cautions: [caution] })).toEqual([words]));
});

describe("gaugeSentence(answer, units) says whether it is the filter, and how long until the change limit", () => {
  const said = (more: object) => marked(gaugeSentence({ ...answer, ...more } as GaugeAnswer, "metric"));
  const soil = "It is the filter: soil explains what the gauge of Heron reads.";
  const left = hoursLeft(50, 80, 120);
  const at = "at full demand and {left: temperature where the limit is met|-10 °C}";
  const over = "the vacuum at the pump goes over its limit at change";
  const about = `About {left: running time left|80 h} left, nine times in ten {left: running time left, low end|50 h} to {left: running time left, high end|120 h}; then, ${at}, ${over}.`;
  const reasons = [{ code: "no trend", count: 6 }, { code: "no limit" }];
  const why =
    "{readings: readings at different times|6} readings show no growth beyond their own scatter; go on noting, and no limit is stated, or none is met however full the elements get";
  const from = { row: 4, line: null };
  const loading = { code: "loading", side: "suction" };
  const jumps = [
    { code: "jump", side: "suction", from, by: 4e3 },
    { code: "jump", side: "delivery", from, by: 4e3 },
  ];
  const cold = { code: "cold", side: "suction", by: 4e3, coldest: 263.15 };
  test.each([
    [{ verdict: "cannot tell", reasons, findings: [loading] }, `Cannot tell yet what the gauge of Heron says: ${why}.`],
    [{}, soil],
    [{ left }, `${soil} ${about}`],
    [{ left: hoursLeft(0, 0, 0) }, `${soil} The change limit is met already: ${at}, ${over}.`],
    [{ reasons }, `${soil} How long they last cannot be told yet: ${why}.`],
    [
      { verdict: "other", findings: [loading, ...jumps, cold], left },
      `Not only soil at Heron: a jump; worse in the cold than viscosity explains. ${about}`,
    ],
    [
      { verdict: "other", findings: [cold], reasons: [{ code: "not the filter" }] },
      "Not only soil at Heron: worse in the cold than viscosity explains.",
    ],
    [
      { verdict: "other", findings: [cold], reasons: [{ code: "not the filter" }, ...reasons].slice(1) },
      `Not only soil at Heron: worse in the cold than viscosity explains. How long the elements last cannot be told: ${why}.`,
    ],
  ])("%j", (more, words) => expect(said(more)).toBe(words));
});

test("gaugeSentence(answer, units) of what is not soil alone says why hours cannot be told, where there is more to say", () => {
  const reasons = [{ code: "not the filter" }, { code: "no limit" }];
  const findings = [{ code: "weak delivery", from: { row: 4, line: null }, by: 4e3 }];
  const words = gaugeSentence({ ...answer, verdict: "other", findings, reasons } as unknown as GaugeAnswer, "metric");
  expect(marked(words)).toBe(
    "Not only soil at Heron: weak delivery. How long the elements last cannot be told: what the readings show is not soil, and its hours would mean nothing; put that right and begin afresh, and no limit is stated, or none is met however full the elements get.",
  );
});
