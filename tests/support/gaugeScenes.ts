import type { LoadingLawName } from "@thirstline/core";
import type { GaugeReading, System } from "@thirstline/spec/system";
import { averaged, intervalOf } from "../../packages/study/src/gauge/averaged.js";
import { type Fitted, fitOne } from "../../packages/study/src/gauge/fitAll.js";
import type { GaugeAnswer, GaugeOptions } from "../../packages/study/src/gauge/GaugeAnswer.js";
import { gaugeFacts } from "../../packages/study/src/gauge/gaugeFacts.js";
import { type GaugeFits, suctionAt } from "../../packages/study/src/gauge/gaugeFits.js";
import { type GaugeSide, instantsOf } from "../../packages/study/src/gauge/instantsOf.js";
import { lawWeights } from "../../packages/study/src/gauge/lawWeights.js";
import type { SideFit } from "../../packages/study/src/gauge/SideFit.js";
import { flat, shapes } from "../../packages/study/src/gauge/shapes.js";
import type { Term } from "../../packages/study/src/gauge/Term.js";
import { weigh } from "../../packages/study/src/gauge/weigh.js";
import { explainedScene } from "../../packages/study/src/working/gauge/explainedScene.js";
import type { FitScene } from "../../packages/study/src/working/gauge/FitScene.js";
import type { GaugeGiven } from "../../packages/study/src/working/gauge/GaugeGiven.js";
import { type SoilScene, soilScene } from "../../packages/study/src/working/gauge/gaugeScenes.js";
import { elementOf, plainSystem } from "./plainSystem.js";

const HOUR = 3600;

/** The plain pump with an element of 4 kPa behind it too. */
export const plainBothSides: System = { ...plainSystem, delivery: [elementOf("behind", { drop: 4e3 }).filter] };

/** What the plain pump's metre costs, Pa; its element costs 1 kPa at full load, the one behind it 4 kPa. */
export const METRE = 830 * 9.80665;

/** Readings at full load, the tank as good as empty, 10 h apart; the first is that of new elements. */
export function plainReadings(
  kilopascals: readonly number[],
  more: (at: number) => Partial<GaugeReading> = () => ({}),
): GaugeReading[] {
  return kilopascals.map((vacuum, at) => ({
    row: at + 1,
    line: at + 2,
    hours: (1000 + 10 * at) * HOUR,
    vacuum: METRE + vacuum * 1e3,
    load: 1,
    temperature: 288.15,
    depth: 0,
    changed: at === 0,
    ...more(at),
  }));
}

/** An element that fills evenly, three tenths of its clean drop in 10 h, with a scatter of its readings. */
export const EVENLY = [1.05, 1.24, 1.63, 1.86, 2.27, 2.44, 2.83, 3.07] as const;

export interface OneGauge {
  readonly system?: System;
  readonly readings: readonly GaugeReading[];
  readonly side?: GaugeSide;
  /** tried, "none" being no growth; what is found besides soil is fitted with the first */
  readonly laws?: readonly (LoadingLawName | "none")[];
  readonly terms?: readonly Term[];
  readonly sizes?: readonly number[];
  readonly evidence?: SideFit["explained"]["evidence"];
  readonly answer?: Partial<GaugeAnswer>;
  readonly options?: GaugeOptions;
}

export interface OneGaugeFitted {
  readonly given: GaugeGiven;
  readonly fits: GaugeFits;
  readonly fit: SideFit;
  readonly explained: FitScene;
  readonly soil: SoilScene;
}

/** One gauge fitted by a law or two in place of all, with the terms given in place of those searched: so in a moment. */
export function oneGauge({ readings, side = "suction", terms = [], options = {}, ...more }: OneGauge): OneGaugeFitted {
  // A copy, so that nothing of another test is remembered of it.
  const system = { ...(more.system ?? plainSystem) };
  const facts = gaugeFacts(system, readings, options);
  if ("code" in facts) throw new Error(facts.code);
  const { built, gaugeError, run } = facts;
  const others = side === "suction" ? () => new Map<string, number>() : suctionAt(facts, null);
  const instants = instantsOf(side, run.readings, { built, path: facts[side], others, gaugeError });
  const weighed = weigh({ instants, start: run.start }, facts.zero[side], facts.weight);
  const tried = (more.laws ?? ["cake"]).flatMap((law) => [flat, ...shapes].filter((one) => one.law === law));
  const fittedWith = (own: readonly Term[]): Fitted[] =>
    tried.flatMap(
      (shape) =>
        fitOne(weighed, shape === flat ? flat : { ...shape }, own, own.length > 0 ? (more.sizes ?? []) : []) ?? [],
    );
  const fitted = fittedWith([]);
  const laws = lawWeights(fitted);
  const [first] = laws;
  const last = instants.at(-1);
  if (!first || !last) throw new Error("nothing is fitted");
  const draws = averaged(weighed, laws, options.seed ?? 1);
  const ratio = intervalOf(draws, ({ state }) => state.ratioAt(last.time));
  const soil = { weighed, laws, trend: true, best: first.fitted, draws, ratio };
  const fits = terms.length > 0 ? fittedWith(terms) : fitted;
  const explained = { terms, evidence: more.evidence ?? [], fits, soil: fitted };
  const fit: SideFit = { weighed, explained, soil, soilWithout: null };
  const sides = { suction: null, delivery: null, [side]: fit };
  const all: GaugeFits = { facts, ...sides, shown: [], settled: sides, lefts: [] };
  const given: GaugeGiven = { system, readings, answer: (more.answer ?? {}) as GaugeAnswer, options, fits: all };
  return {
    given,
    fits: all,
    fit,
    explained: explainedScene(given, all, side, fit),
    soil: soilScene(given, all, side, soil),
  };
}

/** Readings with one thing the matter, and what is fitted to them besides soil, by the kind of it. */
export const troubled: Readonly<Record<Term["kind"], () => OneGauge>> = {
  outlier: () => ({
    readings: plainReadings(EVENLY.map((read, at) => (at === 3 ? read + 6 : read))),
    terms: [{ kind: "outlier", at: 3 }],
    sizes: [8],
  }),
  step: () => ({
    readings: plainReadings(EVENLY.map((read, at) => (at >= 4 ? read + 2 : read))),
    terms: [{ kind: "step", at: 4 }],
    sizes: [2],
  }),
  thin: () => ({
    readings: plainReadings(EVENLY.map((read, at) => (at >= 4 ? 0.6 * read : read))),
    terms: [{ kind: "thin", at: 4 }],
    sizes: [0.3],
  }),
  cold: () => ({
    readings: plainReadings(
      EVENLY.map((read, at) => (at % 3 === 1 ? 2 * read : read)),
      (at) => ({ temperature: at % 3 === 1 ? 278.15 : 288.15 }),
    ),
    terms: [{ kind: "cold", below: 288.15 }],
    sizes: [0.5],
  }),
  fall: () => ({
    readings: plainReadings(EVENLY.toReversed()),
    laws: ["none"],
    terms: [{ kind: "fall" }],
    sizes: [2],
  }),
};
