import type { CardDuplex, CardElement, CardFacts, CardItem } from "../card/CardAnswer.js";
import { byStyle, step } from "./cardItems.js";
import { namesWords } from "./namesWords.js";
import { quantity } from "./quantity.js";
import { sideWords } from "./sideWords.js";
import type { UnitSystem } from "./units.js";
import { fig, say, type Words } from "./words.js";

/** Stop, make safe, take off, and look at what was caught. */
export function cardTakingOff(facts: CardFacts, units: UnitSystem): CardItem[] {
  const { elements, duplex, temperature, pump } = facts;
  const gauge = pump === "none" ? "the pressure at the engine" : `the gauge ${sideWords(pump).inlet}`;
  return [
    step(say`Before stopping, read ${gauge} at full load, for the log.`),
    step(say`Stop the engine, take the key, let hot parts cool. Wipe around every joint.`),
    ...(duplex ? [step(duplexWords(duplex, facts, units))] : []),
    step(shutWords(facts, units)),
    ...byStyle(elements).map(({ style, names }) => step(offWords(style, names))),
    ...(elements.some(({ style }) => style !== "screen") ? [step(lookWords(temperature))] : []),
  ];
}

/** One side after the other, where a bank allows it. */
function duplexWords(duplex: CardDuplex, { pump, elements }: CardFacts, units: UnitSystem): Words {
  const { first, through, opened, vacuum, verdict } = duplex;
  const other = namesWords(through);
  const turn = opened
    ? say`${other} is shut off now: change over to it first, then shut ${first} and change that`
    : say`change over to ${other} first, shut ${first} and change that`;
  const alone =
    vacuum === null
      ? say`nothing passes on that side alone`
      : verdict === "starves"
        ? say`at full load the engine would starve on that side alone`
        : pump === "none"
          ? say`the engine gets its fuel on that side alone`
          : say`at full load expect ${fig("vacuum alone", quantity(vacuum.middle, "vacuum", units))} on that side alone`;
  const both = through.every((name) => elements.some((one) => one.name === name))
    ? "Change the other side too: a new element takes most of the flow."
    : "A new element beside a soiled one takes most of the flow.";
  return say`With the engine running only if the manual says so: ${turn}; ${alone}. ${both}`;
}

/** What keeps fuel back, and what it does where nothing does: the element furthest under the tank tells. */
function shutWords({ cock, elements }: CardFacts, units: UnitSystem): Words {
  const opened = elements.filter(({ style }) => style !== "in-tank" && style !== "screen");
  const [deepest] = opened.toSorted((one, other) => other.head - one.head);
  const shut = cock === null ? say`Shut the fuel cock, or clamp the line where there is none` : say`Shut ${cock}`;
  if (!deepest) return say`${shut}; open the tank cap to let pressure off.`;
  const height = fig(`head over ${deepest.name}`, quantity(Math.abs(deepest.head), "length", units));
  const runs =
    deepest.head > 0
      ? say`: a full tank stands ${height} over ${deepest.name} and would run out`
      : say`: the tank lies ${height} under ${deepest.name}, so fuel falls back and air comes in`;
  return say`${shut}${runs}. Open the tank cap, then crack a bleed screw to let pressure off.`;
}

/** How one of a style comes off. */
function offWords(style: CardElement["style"], names: string): Words {
  switch (style) {
    case "spin-on":
      return say`${names}: unscrew over the tray, keep the full side up; see that the old seal came off with it.`;
    case "cartridge":
      return say`${names}: drain the housing by its screw, loosen cover or centre bolt, lift the element out; keep springs and washers in their order.`;
    case "in-line":
      return say`${names}: clamp both hoses, note the arrow, loosen the clips, draw it out with both ends up.`;
    case "bowl":
      return say`${names}: hold the bowl, free its nut or clip, lower it level into the tray, take the element out.`;
    case "in-tank":
      return say`${names}: tank vapour is in the opening, so no spark; draw the pick-up out slowly, cap the line, cover the opening.`;
    case "screen":
      return say`${names}: take out, look, brush in clean fuel and blow through against the flow; torn gauze is replaced.`;
    case null:
      return say`${names}: the file does not say how it is built; take it off as the manual shows.`;
  }
}

/** What the dirt of an old element tells; common practice, no source. */
function lookWords(temperature: number): Words {
  const wax = temperature < 278.15 ? "; pale jelly: wax, or ice" : "";
  return say`Open the old element over the tray. Black slime: growth, so water in the tank; rust: tank or drums; glitter: wear before the element; drops of water: drain sooner${wax}; torn or caved in: it went past its limit; clean though the gauge read high: the trouble is elsewhere.`;
}
