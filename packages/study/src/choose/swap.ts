import { InputError } from "@thirstline/core";
import type { CatalogueElement, System, SystemFilter } from "@thirstline/spec/system";
import { lifeDraws } from "../spread/lifeDraws.js";
import type { AskedRating } from "./betaAt.js";
import { captureBetween } from "./captureBetween.js";
import { elementAt } from "./elementAt.js";
import { fitElement } from "./fitElement.js";
import { filterPlaces } from "./places.js";
import type { SwapAnswer, SwapReason, SwapVerdict, Weight } from "./SwapAnswer.js";
import { fitReasons } from "./swapFit.js";
import { protectionReasons } from "./swapProtection.js";
import { swapSide } from "./swapSide.js";
import { supplyReasons } from "./swapSupply.js";
import { temperaturesOf } from "./temperaturesOf.js";
import type { CostGiven } from "./yearlyCost.js";

/** What is swapped for what. */
export interface SwapGiven {
  /** name of the filter, or of several that get the same element */
  readonly at: string | readonly string[];
  readonly with: CatalogueElement;
}

/** What to go by besides what the file says. */
export interface SwapOptions extends CostGiven {
  /** what a catalogue says of the element fitted now: its thread, price and work */
  readonly fitted?: CatalogueElement | null;
  /** a fineness the manual asks some element on the way for */
  readonly rating?: AskedRating;
  /** fuel temperatures to judge at, K; the seasons' and the file's own when left out */
  readonly temperatures?: readonly number[];
  /** draws of what is uncertain, for the chance of starving; 200 when left out */
  readonly draws?: number;
  readonly seed?: number;
  /** lives drawn beforehand, by `lifeDraws` of the system and of it with the element fitted; instead of `draws` */
  readonly lives?: { readonly now: Float64Array; readonly changed: Float64Array };
}

const HEAVIEST_FIRST: readonly Weight[] = ["no", "cannot say", "care", "note"];

/**
 * May this element be fitted instead? Protection first, as the manual asks for it; then whether the engine still gets its
 * fuel, warm, cold and at the change; how long it lasts; whether it fits; and what a year of it costs, side by side with
 * what is fitted now.
 *
 * Coarser than the manual asks is a plain no. Finer than it asks is never a reason to change. Where data are missing the
 * answer is "cannot say", and the maker is to be asked.
 *
 * @param system from a system file
 * @param given places and the element
 * @throws InputError for a place that is no filter of the system, or an option out of range
 */
export function swap(system: System, given: SwapGiven, options: SwapOptions = {}): SwapAnswer {
  const at = typeof given.at === "string" ? [given.at] : [...new Set(given.at)];
  const filters = placesNamed(system, at);
  const fitted = options.fitted ?? null;
  const other = given.with;
  const { draws = 200, seed = 1 } = options;
  if (!(Number.isInteger(draws) && draws >= 0)) throw new InputError("swap", "draws", "a whole number from 0", draws);
  const temperatures = [...(options.temperatures ?? temperaturesOf(system))].sort((one, two) => one - two);
  if (temperatures.length === 0) throw new InputError("swap", "temperatures", "one or more", 0);
  const changed = fitElement(system, at, other);
  const drawnOf = (one: System, lives: Float64Array | undefined) =>
    lives ?? (draws > 0 ? () => lifeDraws(one, { from: 0, to: draws, seed }) : null);
  const common = { at, temperatures, cost: options };
  const first = filters[0] as SystemFilter;
  const now = swapSide({
    ...common,
    system,
    lives: drawnOf(system, options.lives?.now),
    element: fitted,
    name: fitted?.name ?? first.name,
  });
  const then = swapSide({
    ...common,
    system: changed,
    lives: drawnOf(changed, options.lives?.changed),
    element: other,
    name: other.name,
  });
  const fineness = captureBetween(first, other.filter);
  const facts = { system, changed, at, filters, fitted, other, now, then, fineness, temperatures };
  const reasons = [
    ...protectionReasons(facts, options.rating ?? null),
    ...supplyReasons(facts),
    ...fitReasons(facts),
  ].sort((one, two) => HEAVIEST_FIRST.indexOf(one.weight) - HEAVIEST_FIRST.indexOf(two.weight));
  return {
    question: "swap",
    system: system.name,
    pump: system.pump.kind,
    at,
    with: other.name,
    verdict: verdictOf(reasons),
    reasons,
    fineness,
    asked: system.protection?.code ?? null,
    interval: system.service ? { time: system.service.interval, source: system.service.source ?? null } : null,
    now,
    changed: then,
    broken: then.cold.reasons.flatMap((reason) => (reason.code === "broken" ? [reason.limit] : [])),
  };
}

/** The element that is fitted at a place now, put in again: for comparing. */
export function asFitted(system: System, name: string): CatalogueElement {
  const element = elementAt(system, name);
  if (!element) throw noSuchPlace(system, name);
  return element;
}

function placesNamed(system: System, names: readonly string[]): SystemFilter[] {
  const places = filterPlaces(system);
  if (names.length === 0) throw new InputError("swap", "at", "one place or more", 0);
  return names.map((name) => {
    const found = places.find(({ part }) => part.name === name);
    if (!found) throw noSuchPlace(system, name);
    return found.part;
  });
}

function noSuchPlace(system: System, name: string): InputError {
  const names = filterPlaces(system).map(({ part }) => `"${part.name}"`);
  return new InputError("swap", "at", `a filter of ${system.name}, one of ${names.join(", ")}`, name);
}

function verdictOf(reasons: readonly SwapReason[]): SwapVerdict {
  const heaviest = reasons[0]?.weight ?? "note";
  return heaviest === "note" ? "yes" : heaviest === "care" ? "with care" : heaviest;
}
