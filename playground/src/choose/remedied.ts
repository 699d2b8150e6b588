import type { System } from "@thirstline/spec/system";
import { applyRemedy, type Remedy } from "@thirstline/study";

/** A system with changes made, as the sheet takes it: fuel that is warmer is so in every season. */
export function remedied(system: System, changes: readonly Remedy[]): System {
  const warmer = changes.reduce((sum, one) => sum + warmth(one), 0);
  const { spreads, duty } = system;
  const changed = changes.reduce(applyRemedy, system);
  const seasons = duty?.seasons?.map((one) => ({ ...one, temperature: one.temperature + warmer }));
  return {
    ...changed,
    temperature: changed.temperature + warmer,
    ...(duty && seasons ? { duty: { ...duty, seasons } } : {}),
    // As they were: the sheet carries them to where their figures stand then.
    ...(spreads === undefined ? {} : { spreads }),
  };
}

function warmth(remedy: Remedy): number {
  if (remedy.kind === "warmer fuel") return remedy.by;
  return remedy.kind === "cooler fuel" ? -remedy.by : 0;
}
