import type { WhyQuery } from "../args/readWhy.js";
import { exit } from "../exit.js";
import type { Paint } from "../io/paint.js";
import { whyJson } from "../json/whyJson.js";
import { whyMarkdown } from "../text/whyMarkdown.js";
import { whyText } from "../text/whyText.js";
import { wrap } from "../text/wrap.js";
import type { Opened } from "./Opened.js";
import { ofWhich } from "./ofWhich.js";
import type { Shown } from "./Shown.js";
import type { Subject } from "./Subject.js";

/** A figure, and what it is of. */
interface Figure {
  readonly subject: Subject;
  readonly figure: string;
}

/** How a figure was reached, once for each temperature it was asked at. */
export function workingShown({ subject, figure }: Figure, opened: Opened, why: WhyQuery, paint: Paint): Shown {
  const { title, file, query } = opened;
  const { depth, form } = why;
  const found = subject.workings(figure);
  const workings = found.flatMap((one) => one ?? []);
  const code = workings.length > 0 && workings.length === found.length ? exit.yes : exit.cannotSay;
  if (form === "json") {
    const answers = workings.map((one) => ({ file, ...whyJson(one, depth ?? 100, ofWhich(why, subject)) }));
    return { text: `${JSON.stringify({ answers }, null, 2)}\n`, code };
  }
  if (workings.length === 0) {
    const of = subject.label === "" ? title : `"${subject.label}"`;
    const reason = why.of === null ? "the file does not state it" : "what it rests on is not stated or not known";
    return { text: lines(wrap(`"${figure}" has no value for ${of} here: nothing flows, or ${reason}.`)), code };
  }
  const look = { units: query.units, depth: depth ?? 1, paint };
  const told = workings.map((one) => ({ ...one, system: subject.name }));
  const blocks = told.map((one) => (form === "markdown" ? whyMarkdown(one, look) : whyText(one, look)));
  return { text: blocks.map(lines).join("\n"), code };
}

function lines(block: readonly string[]): string {
  return `${block.join("\n")}\n`;
}
