import type { WhyQuery } from "../args/readWhy.js";
import { exit } from "../exit.js";
import type { Paint } from "../io/paint.js";
import { whyListJson } from "../json/whyJson.js";
import { whyList } from "../text/whyList.js";
import type { Opened } from "./Opened.js";
import { ofWhich } from "./ofWhich.js";
import type { Shown } from "./Shown.js";
import type { Subject } from "./Subject.js";

/** The figures that can be asked for. */
export function listShown(subjects: readonly Subject[], opened: Opened, why: WhyQuery, paint: Paint): Shown {
  const { title, file, query } = opened;
  if (why.form === "json") {
    const answers = subjects.map((one) => ({ file, ...whyListJson(title, one.brief(), ofWhich(why, one)) }));
    return { text: `${JSON.stringify({ answers }, null, 2)}\n`, code: exit.yes };
  }
  const lists = subjects.map((one) => ({ label: one.label, about: one.about, figures: one.brief() }));
  const look = {
    units: query.units,
    paint,
    command: ["thirstline why", ...why.files].join(" "),
    options: why.of === null ? "" : ` --of ${why.of} ...`,
  };
  return { text: `${whyList(title, lists, look).join("\n")}\n`, code: exit.yes };
}
