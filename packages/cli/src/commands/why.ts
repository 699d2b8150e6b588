import type { Fault } from "@thirstline/spec";
import type { OtherQuestion } from "../args/otherQuestions.js";
import type { Run } from "../args/Run.js";
import { readWhy, type WhyQuery } from "../args/readWhy.js";
import { exit } from "../exit.js";
import { argumentFaults, complain } from "../io/complain.js";
import { type Paint, painter } from "../io/paint.js";
import { findFigure } from "../why/findFigure.js";
import { listShown } from "../why/listShown.js";
import type { Open, Opened } from "../why/Opened.js";
import { openCard } from "../why/openCard.js";
import { openFile } from "../why/openFile.js";
import { openFleet } from "../why/openFleet.js";
import { openGauge } from "../why/openGauge.js";
import { openRemedy } from "../why/openRemedy.js";
import { openSize } from "../why/openSize.js";
import { openSwap } from "../why/openSwap.js";
import type { Shown } from "../why/Shown.js";
import { workingShown } from "../why/workingShown.js";
import { refusal } from "./refusal.js";

/** How each question whose figures are asked for with --of is asked. */
export const openers: Readonly<Record<OtherQuestion, Open>> = {
  gauge: openGauge,
  swap: openSwap,
  size: openSize,
  remedy: openRemedy,
  card: openCard,
  fleet: openFleet,
};

/** `thirstline why`: why that number? */
export const runWhy: Run = async (request, io, out, err) => {
  const json = request.given.has("json");
  const why = readWhy(request);
  if ("faults" in why) return complain(argumentFaults(why.faults), json, out, err);
  const open = why.of === null ? openFile : openers[why.of];
  const opened = await open({ ...request, files: why.files }, io, out, err);
  if (opened === null) return exit.fault;
  const reply = replyTo(opened, why, painter(io));
  const faults = [...(opened.faults ?? []), ...("fault" in reply ? [reply.fault] : [])];
  if (faults.length > 0) await complain(faults, json, out, err);
  // A program that reads JSON gets the answers or the faults, never a mixture.
  if ("fault" in reply || (json && faults.length > 0)) return exit.fault;
  await out.write(reply.text);
  return faults.length > 0 ? exit.fault : reply.code;
};

/** The figure asked for, or the list of them; they are worked out here, and core may refuse something asked. */
function replyTo(opened: Opened, why: WhyQuery, paint: Paint): Shown | { readonly fault: Fault } {
  try {
    const found = findFigure(opened.subjects(), why.figure);
    if ("list" in found) return listShown(found.list, opened, why, paint);
    if ("subject" in found) return workingShown(found, opened, why, paint);
    const [fault] = argumentFaults([{ at: `"${why.figure}"`, code: "unknown figure", message: found.unknown }]);
    return { fault: fault as Fault };
  } catch (error) {
    return { fault: refusal(opened.file, error) };
  }
}
