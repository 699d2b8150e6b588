import { type LoadingLawName, lawConstants } from "@thirstline/core";
import { gauge } from "@thirstline/study";
import { expect, test } from "vitest";
import { seeded } from "../../support/random.js";
import { type Growth, heron, historyOf, lawGrowth, strange } from "./histories.js";

// Whether the truth lies in the 90 % interval of the hours left, nine times in ten: over invented histories whose noise was
// chosen beforehand (see histories.ts). The laws that are fitted are drawn in turn; growth by no fitted law is measured too,
// and its shortfall printed, not hidden.
//
// All 1,000 take minutes: THIRSTLINE_LONG=1 npx vitest run --project node tests/properties/gauge

const LONG = process.env.THIRSTLINE_LONG === "1";
const FITTED = LONG ? 1000 : 135;
const STRANGE = LONG ? 333 : 15;

interface Tally {
  /** histories, those with an interval, and of these the ones that hold the truth, and that end too early or too late */
  all: number;
  told: number;
  holds: number;
  tooEarly: number;
  tooLate: number;
  /** told that the interval is too wide to be of use; counted among those with an interval */
  wide: number;
  /** something named that was not there */
  named: number;
}

const none = (): Tally => ({ all: 0, told: 0, holds: 0, tooEarly: 0, tooLate: 0, wide: 0, named: 0 });

function count(tally: Tally, seed: number, growth: (limit: number, random: () => number) => Growth): void {
  const { readings, left } = historyOf({ random: seeded(seed), growth });
  const answer = gauge(heron, readings);
  tally.all++;
  if (answer.findings.some(({ code }) => code !== "loading")) tally.named++;
  const wide = answer.reasons.find((reason) => reason.code === "too wide");
  const found = answer.left ?? (wide?.code === "too wide" ? wide : null);
  if (found === null) return;
  tally.told++;
  if (wide) tally.wide++;
  if (left < found.low) tally.tooLate++;
  else if (left > (found.high ?? Infinity)) tally.tooEarly++;
  else tally.holds++;
}

function line(name: string, { all, told, holds, tooEarly, tooLate, wide, named }: Tally): string {
  const share = ((100 * holds) / told).toFixed(1);
  return `${name.padEnd(22)} ${share} % of ${told} (of ${all}; ${tooEarly} last longer, ${tooLate} shorter; ${wide} too wide to use; ${named} named for something else)`;
}

test("the 90 % interval of the hours left holds the truth 87 to 93 times in 100, where the law is one of those fitted", {
  timeout: 3_600_000,
}, () => {
  const laws = Object.keys(lawConstants) as LoadingLawName[];
  const tallies = new Map(laws.map((law) => [law, none()]));
  for (let at = 0; at < FITTED; at++) {
    const law = laws[at % laws.length] as LoadingLawName;
    count(tallies.get(law) as Tally, 20_000 + at, (limit, random) => lawGrowth(law, limit, random));
  }
  const total = none();
  for (const tally of tallies.values())
    for (const key of Object.keys(total) as (keyof Tally)[]) total[key] += tally[key];
  console.log([...[...tallies].map(([law, tally]) => line(law, tally)), line("all fitted laws", total)].join("\n"));
  expect(total.all).toBe(FITTED);
  expect(total.told).toBeGreaterThan(0.9 * FITTED);
  // A sample of 135 is known to 2.6 in 100 only: there the bounds give way by two of those.
  const slack = LONG ? 0 : 2 * Math.sqrt((0.9 * 0.1) / FITTED);
  expect(total.holds / total.told).toBeGreaterThan(0.87 - slack);
  expect(total.holds / total.told).toBeLessThan(0.93 + slack);
  // Soil alone is hardly ever taken for something else.
  expect(total.named / total.all).toBeLessThan(0.05);
});

test("where growth follows no fitted law the interval falls short, by so much", { timeout: 3_600_000 }, () => {
  const lines = Object.entries(strange).map(([name, growth]) => {
    const tally = none();
    for (let at = 0; at < STRANGE; at++) count(tally, 50_000 + at, growth);
    expect(tally.all).toBe(STRANGE);
    // No promise, but a floor: were it lower, an answer would mislead more often than it helps.
    expect(tally.holds / tally.told, name).toBeGreaterThan(0.4);
    return line(name, tally);
  });
  console.log(lines.join("\n"));
});
