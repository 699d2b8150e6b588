import type { SystemFilter } from "@thirstline/spec/system";
import { type Changeable, changedOf } from "../../card/changedOf.js";
import { emptiedLines, isOpened } from "../../card/volumesOf.js";
import { placesOf } from "../../choose/places.js";
import type { FigureMaker } from "../figures/FigureMaker.js";
import { figuresIn } from "../figures/figuresIn.js";
import * as formulas from "../formulas/bench.js";
import type { Step } from "../Step.js";
import { filePlace } from "../scene/filePlace.js";
import { asked, fromFile, fromSource, inWords, worked } from "../worked.js";
import type { CardGiven } from "./CardGiven.js";

const VOLUME = { unit: "m3", kind: "volume" } as const;

/** Fuel that runs out, and what it takes to get the air out again. */
export function volumeFigures(given: CardGiven): FigureMaker[] {
  const { system, answer } = given;
  const changed = changedOf(system, given.options.at ?? []);
  const figure = figuresIn("Fuel and air");
  const lines = (): Step =>
    summed(
      emptiedLines(changed).map((line) => {
        const part = (key: "bore" | "length") => stated(given, line.name, key, line[key]);
        return worked(formulas.lineVolume, { D: part("bore"), L: part("length") }, { name: `fuel in ${line.name}` });
      }),
      answer.volumes.lines,
    );
  const { priming } = answer;
  const dry = [...priming.forbidden, ...priming.assumed];
  // In the order in which the card adds them up.
  const dryOnes = changed.filter(({ part }) => dry.includes(part.name));
  const least = () =>
    summed(
      dryOnes.map((one) => bodyOf(given, one)),
      priming.least,
    );
  const most = () => worked(formulas.volumeSum, { v: [least(), lines()] }, { value: priming.most });
  const f = fromSource("common practice, no source", {
    name: "share of the sweep that moves",
    value: priming.fill,
    unit: "1",
    kind: "ratio",
  });
  const strokes = (V: Step): Step | null => {
    const s = strokeOf(given);
    if (!s) return null;
    const n = worked(formulas.strokes, { V, s, f });
    const value = Math.ceil(n.value * (1 - 1e-12));
    return inWords("rounded up to whole ones", { name: "strokes", value, unit: "1", kind: "plain" }, [n]);
  };
  return [
    ...changed.flatMap(({ part }) =>
      part.part === "filter"
        ? (["body", "bowl"] as const).map((key) =>
            figure(`${key} of ${part.name}`, () => {
              const value = part[key];
              return value === undefined ? null : stated(given, part.name, key, value);
            }),
          )
        : [],
    ),
    figure("fuel in the bodies", () =>
      summed(
        changed.filter(isOpened).map((one) => bodyOf(given, one)),
        answer.volumes.bodies,
      ),
    ),
    figure("fuel in the lines beside", lines),
    figure("sweep of a stroke", () => strokeOf(given)),
    figure("share of the sweep that moves", () => f),
    figure("least air to move", least),
    figure("most air to move", most),
    figure("least strokes", () => strokes(least())),
    figure("most strokes", () => strokes(most())),
  ];
}

function summed(v: readonly Step[], value: number): Step {
  if (v.length > 0) return worked(formulas.volumeSum, { v }, { value });
  return inWords("nothing is opened that holds any", { name: "volume", value: 0, ...VOLUME });
}

/** Fuel in a body; of one that is not stated, its bowl. */
function bodyOf(given: CardGiven, { part }: Changeable): Step {
  const { body, bowl, name } = part as SystemFilter;
  if (body !== undefined) return stated(given, name, "body", body);
  if (bowl !== undefined) return stated(given, name, "bowl", bowl);
  return inWords("not stated, so not counted", { name: `body of ${name}`, value: 0, ...VOLUME });
}

function strokeOf({ answer, options }: CardGiven): Step | null {
  const { stroke } = answer.priming;
  if (stroke === null) return null;
  const plain = { name: "sweep of a stroke", value: stroke, ...VOLUME, kind: "small volume" } as const;
  return options.primer === undefined ? fromFile("service.primer", plain) : asked("primer", plain);
}

function stated({ system }: CardGiven, part: string, key: "body" | "bowl" | "bore" | "length", value: number): Step {
  const place = placesOf(system).find((one) => one.part.name === part);
  const path = `${place ? filePlace(system, place.path) : part}.${key}`;
  const name = `${key} of ${part}`;
  if (key === "body" || key === "bowl") return fromFile(path, { name, value, ...VOLUME });
  return fromFile(path, { name, value, unit: "m", kind: key });
}
