import type { System } from "@thirstline/spec/system";
import type { LifeAnswer } from "../life/LifeAnswer.js";
import type { WaterRow } from "../life/WaterAnswer.js";
import type { CardWater } from "./CardAnswer.js";

/** How often each bowl is to be drained, by what `life` says of water; or why that cannot be told. */
export function waterFor(system: System, life: LifeAnswer): CardWater {
  if (system.deliveredFuel?.water === undefined) return { code: "no water stated" };
  if (life.water === null) return { code: "life not known", reasons: life.reasons };
  const { season, temperature, free, stages } = life.water;
  if (free === 0) return { code: "nothing free", temperature };
  if (stages.length === 0) return { code: "no separator", temperature, free };
  return { code: "stages", season, temperature, stages: stages.map(stageOf) };
}

function stageOf({ element, kind, rate, drainEvery, shutAfter }: WaterRow) {
  const every = kind === "bowl" ? drainEvery : shutAfter;
  const why = every !== null ? null : rate > 0 ? ("bowl not stated" as const) : ("none comes" as const);
  return { element, kind, every, why };
}
