import type { Leaf } from "./Leaf.js";
import type { WorkedQuestion } from "./leafAt.js";

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
};

const keys: Readonly<Record<WorkedQuestion, Keys>> = {
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
  },
};

/**
 * Which working belongs to a live figure of a sentence, by its key; the sentence's own temperature and demand are for the
 * caller to ask with.
 *
 * @returns null for a key that does not tell its figure by itself, such as the share of one element among several
 */
export function figureOfKey(question: WorkedQuestion, key: string): Leaf | null {
  return keys[question][key] ?? null;
}

/** Every key that tells its figure, by question. */
export function keysOf(question: WorkedQuestion): readonly string[] {
  return Object.keys(keys[question]);
}
