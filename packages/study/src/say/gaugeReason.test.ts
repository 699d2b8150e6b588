import { expect, test } from "vitest";
import { marked } from "../../../../tests/support/marked.js";
import type { GaugeReason } from "../gauge/GaugeAnswer.js";
import { gaugeReason } from "./gaugeReason.js";

const HOUR = 3600;
const cases: readonly (readonly [GaugeReason, string])[] = [
  [{ code: "no readings", side: "suction" }, "no reading of a gauge is noted since the elements were new"],
  [
    { code: "no duty for dates" },
    'the readings have dates only, and the file does not say how many hours the machine runs (hours a day and days a year, under "duty")',
  ],
  [
    { code: "hours and dates mixed" },
    "some readings have hours only and some dates only; one of the two is wanted on all",
  ],
  [{ code: "no filter" }, "no filter stands open in the path"],
  [{ code: "shut" }, "nothing can pass: something in the path is shut, by the file"],
  [
    { code: "too few readings", count: 1, needed: 4 },
    "there is {readings: readings at different times|1} reading and it takes {readings: readings needed|4} or more at different hours to see growth",
  ],
  [
    { code: "too few readings", count: 3, needed: 4 },
    "there are {readings: readings at different times|3} readings and it takes {readings: readings needed|4} or more at different hours to see growth",
  ],
  [
    { code: "no trend", count: 6 },
    "{readings: readings at different times|6} readings show no growth beyond their own scatter; go on noting",
  ],
  [
    { code: "too wide", low: 20 * HOUR, high: 900 * HOUR },
    "the laws that fit disagree, anywhere from {left: running time left, low end|20 h} to {left: running time left, high end|900 h}; later readings will settle it",
  ],
  [
    { code: "too wide", low: 20 * HOUR, high: null },
    "the laws that fit disagree, anywhere from {left: running time left, low end|20 h} and more; later readings will settle it",
  ],
  [{ code: "no limit" }, "no limit is stated, or none is met however full the elements get"],
  [
    { code: "no temperature to judge" },
    "at every temperature of the duty the fuel is below its cloud point or outside its data",
  ],
  [
    { code: "not the filter" },
    "what the readings show is not soil, and its hours would mean nothing; put that right and begin afresh",
  ],
];
test.each(cases)("gaugeReason(%j, 'metric') names what would settle it", (reason, words) => {
  expect(marked(gaugeReason(reason, "metric"))).toBe(words);
});
