import type { CardElement, CardFacts, CardItem } from "@thirstline/study";
import { marked } from "./marked.js";

/** An element as a card has it: a spin-on before the pump, with nothing beside it. */
export function cardElement(name: string, more: Partial<CardElement> = {}): CardElement {
  return {
    name,
    style: "spin-on",
    side: "suction",
    from: "tank hose",
    to: "pump line",
    beside: [],
    standby: [],
    head: 0.2,
    body: 1e-3,
    bowl: null,
    prefill: null,
    reversed: false,
    ...more,
  };
}

/** A figure that is known outright. */
const flat = (value: number) => ({ low: value, middle: value, high: value });

/** Facts of a card that changes one spin-on before a pump and has nothing to remark, with others put in. */
export function cardFacts(more: Partial<CardFacts> = {}): CardFacts {
  return {
    question: "card",
    system: "Heron",
    pump: "fixed",
    fuel: "diesel",
    temperature: 288.15,
    verdict: "card",
    elements: [cardElement("A")],
    left: [],
    cock: null,
    relief: null,
    duplex: null,
    volumes: { bodies: 1e-3, unknown: [], lines: 0 },
    priming: {
      allowed: [],
      forbidden: [],
      assumed: [],
      saidAllowed: false,
      stroke: null,
      fill: 0.8,
      least: 1e-3,
      most: 1e-3,
      strokes: null,
      unknown: [],
    },
    bleed: ["A", "the lift pump's outlet", "the injection pump"],
    water: { code: "no water stated" },
    settling: { code: "not known" },
    readings: [{ load: 1, demand: 1e-5, vacuum: flat(9300), feed: null }],
    check: {
      verdict: "holds",
      reasons: [],
      vacuumLimits: { clean: 20e3, atChange: 40e3 },
      feedLimit: 0,
      limitAssumed: false,
    },
    next: { change: null, distance: null, calendar: null, source: null },
    ...more,
  };
}

/** Items of a card as text, each with its kind before it: "step: Wipe every seat clean." */
export function itemTexts(items: readonly CardItem[]): string[] {
  return items.map(({ kind, words }) => `${kind}: ${marked(words)}`);
}
