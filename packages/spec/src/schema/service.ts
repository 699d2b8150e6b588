import type { z } from "zod";
import type { SystemService } from "../system/Service.js";
import { also } from "./also.js";
import { block } from "./block.js";
import { given } from "./given.js";
import { date, measured, text } from "./leaves/index.js";

const lastChange = also(
  block("a last change", "{ date: 2026-01-15, hours: 1200 h, distance: 10000 km }", {
    date: date("the day of the last change").optional(),
    hours: measured("runningTime", "the hour meter's reading").optional(),
    distance: measured("odometer", "the distance meter's reading").optional(),
  }),
  (data, report) => {
    if (Object.keys(data).length > 0) return;
    report([], "missing", "nothing of the last change; write its date, hours or distance");
  },
);

/** When elements are changed, as a file has it. */
export const serviceBlock = also(
  block("a service", "{ interval: 250 h, at most: 500 h, source: operator's manual }", {
    interval: measured("duration"),
    "at most": measured("duration").optional(),
    distance: measured("distance").optional(),
    calendar: measured("calendar").optional(),
    last: lastChange.optional(),
    primer: measured("stroke", "the volume of a stroke of the hand primer").optional(),
    source: text("a source", "operator's manual").optional(),
  }),
  (data, report) => {
    if ((data["at most"] ?? Number.NaN) < (data.interval ?? Number.NaN)) {
      report(
        ["at most"],
        "at most under interval",
        "less than the interval; the interval is the usual, at most the last",
      );
    }
  },
);

/** When elements are changed, in SI. */
export function toService(data: z.output<typeof serviceBlock>): SystemService {
  return given({
    interval: data.interval,
    atMost: data["at most"],
    distance: data.distance,
    calendar: data.calendar,
    last: data.last === undefined ? undefined : given(data.last),
    primer: data.primer,
    source: data.source,
  });
}
