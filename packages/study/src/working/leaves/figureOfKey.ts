import type { Leaf } from "./Leaf.js";
import type { WorkedQuestion } from "./leafAt.js";

/** A question with live figures in its sentences that have a working. */
export type KeyedQuestion = WorkedQuestion | "card" | "gauge";

type Keys = Readonly<Record<string, Leaf>>;

const figure = (name: string, at?: number): Leaf => ({ figure: name, asked: at === undefined ? {} : { at } });

const point: Keys = {
  temperature: figure("temperature"),
  demand: figure("demand"),
  "suction flow": figure("suction flow"),
  vacuum: figure("vacuum"),
  "feed pressure": figure("feed pressure"),
  "clean limit": figure("clean limit"),
  "ceiling at change": figure("ceiling at change"),
  "in hand": figure("in hand"),
  "limit at change": figure("limit at change"),
  "feed limit": figure("feed limit"),
  "vapour pressure": figure("vapour pressure"),
  "lowest pressure": figure("lowest pressure"),
};

const card = (name: string, of = "fitted"): Leaf => ({ figure: name, asked: {}, of });
const left = (name: string): Leaf => ({ figure: name, asked: {}, of: "left" });

/** What stands behind them is the name of an element, so that the key is the figure's own name. */
const named: Readonly<Record<KeyedQuestion, readonly RegExp[]>> = {
  check: [],
  curve: [],
  life: [
    /^share of the rise of ./,
    /^resistance over clean of ./,
    /^share of flow of .+ (with .+ new|before .+ is changed)$/,
    /^next end with .+ alone new$/,
    /^share of free water kept by ./,
    /^draining of ./,
    /^shutting of .+ by water$/,
  ],
  gauge: [],
  card: [/^draining of ./, /^shutting of .+ by water$/, /^head over ./],
};

const keys: Readonly<Record<KeyedQuestion, Keys>> = {
  check: { ...point, share: figure("largest share"), chance: figure("chance that a limit is broken") },
  curve: { ...point, "vacuum at rest": figure("vacuum", 0), head: figure("feed pressure clean", 0) },
  life: {
    temperature: figure("temperature it is judged at"),
    end: figure("end of life"),
    "early end": figure("early end"),
    "late end": figure("late end"),
    horizon: figure("horizon"),
    interval: figure("service interval"),
    "at most": figure("longest interval"),
    change: figure("change"),
    chance: figure("chance of an end before the service interval"),
    dissolved: figure("water dissolved"),
    free: figure("free water"),
    "carried on": figure("free water carried on"),
    "coldest season": figure("coldest season"),
  },
  card: {
    relief: card("relief of the pump"),
    "next change": card("next change"),
    air: card("least air to move"),
    "most air": card("most air to move"),
    strokes: card("least strokes"),
    "most strokes": card("most strokes"),
    "vacuum full": card("vacuum now"),
    "vacuum idle": card("vacuum now", "lowest load"),
    "vacuum alone": card("vacuum now", "duplex"),
    "feed pressure": card("feed pressure"),
    lines: card("fuel in the lines beside"),
    bodies: card("fuel in the bodies"),
    "coldest season": card("coldest season"),
    free: card("free water"),
    settling: card("time to settle"),
  },
  gauge: { left: left("running time left"), temperature: left("temperature where the limit is met") },
};

/**
 * Which working belongs to a live figure of a sentence, by its key; the sentence's own temperature and demand are for the
 * caller to ask with. Where an element has to be told, the key is the figure's own name, with the element's in it. Figures of
 * a card and of readings say what they are `of`: `choiceWorking` takes them, with `cardChoice`, and `gaugeWorking`.
 *
 * @returns null for a key that is no figure of that question
 */
export function figureOfKey(question: KeyedQuestion, key: string): Leaf | null {
  const known = keys[question][key];
  if (known) return known;
  if (!named[question].some((pattern) => pattern.test(key))) return null;
  return question === "card" ? card(key) : figure(key);
}

/** Every key that tells its figure without an element's name, by question. */
export function keysOf(question: KeyedQuestion): readonly string[] {
  return Object.keys(keys[question]);
}
