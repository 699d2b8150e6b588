import * as limits from "../formulas/limits.js";
import { vapourPressure } from "../fuel/vapour.js";
import type { Step } from "../Step.js";
import type { Elements, Scene } from "../scene/Scene.js";
import { ceiling, inHand } from "../supply/ceilings.js";
import { feedLimit, vacuumLimit } from "../supply/limits.js";
import { lowest } from "../supply/lowest.js";
import { feedPressure, vacuum, velocityHead } from "../supply/pressures.js";
import { worked } from "../worked.js";
import { withEnds } from "./bands.js";
import type { FigureMaker } from "./FigureMaker.js";

const PRESSURES = "Vacuum and pressures";
const CEILINGS = "Limits, ceilings and what is in hand";

/** What gauges would read. */
export function pressureFigures(clean: Scene): FigureMaker[] {
  const now = clean.at({ elements: "now" });
  const due = clean.at({ elements: "at change" });
  const { terminal } = { terminal: hasTerminal(clean) };
  const both = (scene: Scene, name: string, of: (scene: Scene) => Step | null) =>
    withEnds(scene, { name, group: PRESSURES, of });
  return [
    ...both(clean, "vacuum", vacuum),
    ...both(now, "vacuum now", vacuum),
    ...(terminal ? both(due, "vacuum at change", vacuum) : []),
    ...both(now, "feed pressure", feedPressure),
    ...both(clean, "feed pressure clean", feedPressure),
    ...(terminal ? both(due, "feed pressure at change", feedPressure) : []),
    ...both(now, "lowest pressure", lowestHere),
    {
      group: PRESSURES,
      name: "velocity head",
      make: () => (Number.isFinite(clean.suctionFlow) ? velocityHead(clean) : null),
    },
    { group: PRESSURES, name: "vapour margin", make: () => vapourMargin(now) },
  ];
}

/** Limits, ceilings, what is in hand and what is free. */
export function ceilingFigures(clean: Scene): FigureMaker[] {
  const now = clean.at({ elements: "now" });
  const single = (name: string, make: () => Step | null): FigureMaker => ({ group: CEILINGS, name, make });
  const ofLimit = (which: "clean" | "at change") => () => vacuumLimit(clean, which);
  return [
    single("clean limit", ofLimit("clean")),
    single("limit at change", ofLimit("at change")),
    single("feed limit", () => ({ ...feedLimit(clean), name: "feed limit" })),
    ...ceilingOf(clean, "clean"),
    ...ceilingOf(now, "at change"),
    ...withEnds(now, { name: "in hand", group: CEILINGS, of: (scene) => finite(inHand(scene, "in hand")) }),
    ...withEnds(clean, { name: "free for soil", group: CEILINGS, of: riseFree }),
  ];
}

/** With elements clean, against all but the limit at change; as they are, against all but the clean limit. */
function ceilingOf(scene: Scene, which: Exclude<Elements, "now">): FigureMaker[] {
  const except = which === "clean" ? "vacuum at change" : "vacuum clean";
  const name = `ceiling ${which}`;
  return withEnds(scene, { name, group: CEILINGS, of: (at) => finite(ceiling(at, except, name)) });
}

function finite(step: Step | null): Step | null {
  return step && Number.isFinite(step.value) ? step : null;
}

function riseFree(scene: Scene): Step | null {
  const [V_l, V] = [vacuumLimit(scene, "at change"), vacuum(scene)];
  return V_l && V && worked(limits.riseFree, { V_l, V });
}

/** At either end with the flow the suction line carries by the likely figures, as the answer has it. */
function lowestHere(scene: Scene): Step | null {
  if (scene.setting.end === "middle") return lowest(scene);
  return lowest(scene.at({ pumped: scene.at({ end: "middle" }).suctionFlow }));
}

/** Over the vapour pressure at the worse end. */
function vapourMargin(now: Scene): Step | null {
  const p = withEnds(now, { name: "lowest pressure", group: PRESSURES, of: lowestHere })[1]?.make() ?? null;
  return p && worked(limits.vapourMargin, { p, p_v: vapourPressure(now) });
}

function hasTerminal({ system }: Scene): boolean {
  const inside = (parts: Scene["system"]["suction"]): boolean =>
    parts.some((part) =>
      part.part === "bank" ? part.branches.some(inside) : part.part === "filter" && part.terminalDrop !== undefined,
    );
  return [...system.tanks.map(({ path }) => path), system.suction, system.delivery ?? []].some(inside);
}
