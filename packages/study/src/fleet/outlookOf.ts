import { build, type System, type SystemPart } from "@thirstline/spec/system";
import { limitsOf } from "../check/limitsOf.js";
import { filtersOf } from "../life/filtersOf.js";
import type { LifeAnswer } from "../life/LifeAnswer.js";
import { life } from "../life/life.js";

/** An element of a system that stands open in the path. */
export interface OutlookElement {
  readonly name: string;
  readonly style: string | null;
  /** before the pump, so that the gauge sees it */
  readonly isSuction: boolean;
  /** what tells two elements of one name apart: its figures */
  readonly figures: string;
}

/** All that is the same for every machine of a system. */
export interface Outlook {
  readonly system: System;
  readonly elements: readonly OutlookElement[];
  /** life with new elements */
  readonly life: LifeAnswer;
  /** elements that make up most of the rise when the first limit is met; all followed where nothing tells */
  readonly first: ReadonlySet<string>;
  /** limits of the inlet vacuum, Pa; null where a gauge says nothing */
  readonly vacuum: { readonly clean: number | null; readonly atChange: number } | null;
}

/** What a system leads one to expect of every machine that has it, from new elements on. */
export function outlookOf(stated: System): Outlook {
  const system = withNewElements(stated);
  const answer = life(system);
  const before = new Set(filtersOf({ ...system, delivery: [] }).map(({ name }) => name));
  const most = Math.max(...answer.elements.map(({ share }) => share), 0);
  const { vacuumClean, vacuumAtChange } = limitsOf(build(system)).limits;
  return {
    system,
    elements: filtersOf(system)
      .filter(({ blocked }) => !blocked)
      .map((filter) => {
        const { name, style, reversed: _reversed, blocked: _blocked, ...figures } = filter;
        return { name, style: style ?? null, isSuction: before.has(name), figures: JSON.stringify(figures) };
      }),
    life: answer,
    first: new Set(answer.elements.filter(({ share }) => share >= 0.99 * most).map(({ name }) => name)),
    vacuum:
      system.pump.kind === "none" || vacuumAtChange === undefined
        ? null
        : { clean: vacuumClean ?? null, atChange: vacuumAtChange },
  };
}

/** A system without the soil its file states: the log says when its elements were new. */
function withNewElements(system: System): System {
  const clean = (parts: readonly SystemPart[]): SystemPart[] =>
    parts.map((part): SystemPart => {
      if (part.part === "bank") return { ...part, branches: part.branches.map(clean) };
      if (part.part !== "filter" || part.restriction === undefined) return part;
      const { restriction: _soil, ...rest } = part;
      return rest;
    });
  return {
    ...system,
    tanks: system.tanks.map((tank) => ({ ...tank, path: clean(tank.path) })),
    suction: clean(system.suction),
    ...(system.delivery === undefined ? {} : { delivery: clean(system.delivery) }),
  };
}
