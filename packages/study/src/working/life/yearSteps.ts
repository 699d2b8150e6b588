import type { System } from "@thirstline/spec/system";
import * as formulas from "../formulas/duty.js";
import type { Step } from "../Step.js";
import { fromFile, fromSource, inWords, worked } from "../worked.js";
import type { LifeScene } from "./lifeFacts.js";

const TIME = { unit: "s", kind: "running time" } as const;

/** Running time of a year of duty. */
export function year({ facts }: LifeScene): Step {
  return { ...yearOf(facts.system), value: facts.duty.year };
}

/** The same of a system whose life is not followed. */
export function yearOf({ duty }: System): Step {
  const { hoursADay = 0, daysAYear = 0 } = duty ?? {};
  return worked(
    formulas.dutyYear,
    {
      h: fromFile("duty.hours a day", { name: "running time in a working day", value: hoursADay * 3600, ...TIME }),
      n: fromFile("duty.days a year", { name: "working days in a year", value: daysAYear, unit: "1", kind: "plain" }),
    },
    { name: "year of duty" },
  );
}

/** Running time looked ahead. */
export function horizon(life: LifeScene): Step {
  const ten = { name: "years looked ahead", value: 10, unit: "1", kind: "plain" } as const;
  const n = fromSource("common practice, no source", ten);
  return worked(formulas.horizon, { n, Y: year(life) }, { name: "horizon", value: life.facts.given.horizon });
}

/** Fuel burnt up to a time: what each season burns, over its running time until then. */
export function burnt(life: LifeScene, time: Step, value: number): Step {
  const { facts, found } = life;
  const reached = found.end?.time ?? found.moments.at(-1)?.time ?? 0;
  // Beyond what was followed the year's mean is carried on, as the answer does.
  const beyond = time.value > reached && reached > 0;
  const until = beyond ? reached : time.value;
  const { phases } = facts.given;
  const spent = new Map<number, number>();
  let gone = 0;
  for (let at = 0; gone < until && phases.length > 0; at++) {
    const place = at % phases.length;
    const own = Math.min(phases[place]?.duration ?? Infinity, until - gone);
    spent.set(place, (spent.get(place) ?? 0) + own);
    gone += own;
  }
  const places = [...spent.keys()];
  if (places.length === 0) {
    return inWords("nothing is burnt in no time", { name: "fuel burnt", value: 0, unit: "m3", kind: "volume" });
  }
  const t = places.map((place) =>
    inWords("counted along the year", {
      name: `running time in ${seasonOf(life, place)}`,
      value: spent.get(place) ?? 0,
      ...TIME,
    }),
  );
  const B = worked(formulas.fuelBurnt, { q: places.map((place) => meanBurn(life, place)), t });
  if (!beyond) return { ...B, value };
  return worked(
    formulas.burntBeyond,
    {
      B,
      t_1: inWords("as far as the elements were followed", { name: "running time", value: reached, ...TIME }),
      t: time,
    },
    { value },
  );
}

/** Name of the season of a phase of the year. */
export function seasonOf({ facts }: LifeScene, place: number): string {
  const phase = facts.given.phases[place];
  return facts.duty.seasons.find((season) => season.phase.fuel === phase?.fuel)?.name ?? "all year";
}

function meanBurn({ facts }: LifeScene, place: number): Step {
  const loads = facts.system.duty?.loads ?? [{ load: 1, share: 1 }];
  const phase = facts.given.phases[place];
  const full = phase ? facts.built.demand(phase.fuel).burn : 0;
  const ratio = (name: string, value: number) =>
    facts.system.duty?.loads
      ? fromFile("duty.loads", { name, value, unit: "1", kind: "ratio" })
      : inWords("full load all the time, where the file states no loads", { name, value, unit: "1", kind: "ratio" });
  return worked(formulas.meanBurn, {
    x: loads.map(({ share }) => ratio("share of the running time", share)),
    l: loads.map(({ load }) => ratio("load over full load", load)),
    Q_b: inWords("by the demand of the file, at the density of the fuel in that season", {
      name: "burn at full load",
      value: full,
      unit: "m3/s",
      kind: "flow",
    }),
  });
}
