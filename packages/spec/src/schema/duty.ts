import type { z } from "zod";
import type { SystemDuty } from "../system/Duty.js";
import { also, type Report } from "./also.js";
import { block } from "./block.js";
import { given } from "./given.js";
import { date, measured, plain, share, text } from "./leaves/index.js";
import { list } from "./list.js";

const season = also(
  block("a season", "{ name: winter, months: 3, temperature: -10 degC }", {
    name: text("a name", "winter"),
    months: plain({ words: "a number of months", least: 0, most: 12, example: 3 }).optional(),
    share: share("a share of the year", "25 %").optional(),
    temperature: measured("temperature"),
  }),
  (data, report) => {
    if ("months" in data && "share" in data) {
      report(["share"], "stated twice", "the months say how long the season is already; leave one of the two out");
    }
    if (!("months" in data) && !("share" in data)) {
      report(["months"], "missing", "missing; write the season's months such as 3, or its share of the year");
    }
  },
);

const load = also(
  block("a load", "{ load: 60 %, share: 70 % }", {
    load: share("a share of the full demand", "60 %"),
    share: share("a share of the running time", "70 %"),
  }),
  (data, report) => {
    if (data.load === 0)
      report(["load"], "out of range", "nothing is burnt at no load; leave that time out of the hours a day");
  },
);

/** How the machine is run, as a file has it. */
export const dutyBlock = block("a duty", "{ hours a day: 9, days a year: 300, seasons: [{ name: winter, … }] }", {
  "hours a day": plain({ words: "hours a day", least: 0.01, most: 24, example: 9 }),
  "days a year": plain({ words: "days a year", least: 1, most: 366, example: 300 }),
  distance: measured("distance", "a distance a year").optional(),
  starts: date("the day the elements are new").optional(),
  loads: also(
    list("a list of loads", "[{ load: 60 %, share: 70 % }, { load: 100 %, share: 30 % }]", load, {
      least: 1,
      most: 24,
      of: "load",
    }),
    (loads, report) => checkWholeTime(loads as z.output<typeof load>[], report),
  ).optional(),
  seasons: also(
    list("a list of seasons", "[{ name: winter, months: 3, temperature: -10 degC }, …]", season, {
      least: 1,
      most: 24,
      of: "season",
    }),
    (seasons, report) => checkWholeYear(seasons as SeasonData[], report),
  ).optional(),
});

/** Far below what anyone writes, far above what the sum rounds. */
const ROUNDING = 1e-6;

function checkWholeTime(loads: readonly z.output<typeof load>[], report: Report): void {
  const whole = loads.reduce((sum, one) => sum + one.share, 0);
  if (Math.abs(whole - 1) > ROUNDING) {
    const message = `the shares make up ${Number((whole * 100).toPrecision(4))} % of the running time; all together they are 100 %`;
    report([], "not the whole", message);
  }
}

type SeasonData = z.output<typeof season>;

function checkWholeYear(seasons: readonly SeasonData[], report: Report): void {
  const whole = seasons.reduce((sum, one) => sum + shareOf(one), 0);
  if (Math.abs(whole - 1) > ROUNDING) {
    const message = `the seasons make up ${Number((whole * 12).toPrecision(4))} months of the year; all together they are 12`;
    report([], "not a year", message);
  }
}

function shareOf(data: SeasonData): number {
  return data.share ?? (data.months ?? Number.NaN) / 12;
}

/** How the machine is run. */
export function toDuty(data: z.output<typeof dutyBlock>): SystemDuty {
  const seasons = data.seasons?.map((one) => ({ name: one.name, share: shareOf(one), temperature: one.temperature }));
  return given({
    hoursADay: data["hours a day"],
    daysAYear: data["days a year"],
    distance: data.distance,
    starts: data.starts,
    loads: data.loads?.map((one) => ({ load: one.load, share: one.share })),
    seasons,
  });
}
