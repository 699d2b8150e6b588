import { InputError } from "@thirstline/core";
import type { System, SystemFilter, SystemStrainer } from "@thirstline/spec/system";
import type { CardElement } from "./CardAnswer.js";
import { type Spot, spotsOf } from "./spots.js";

/** A filter or a screen with what stands around it. */
export type Changeable = Spot & { readonly part: SystemFilter | SystemStrainer };

/** What can be changed or cleaned, in the order the fuel meets it. */
export function changeable(system: System): Changeable[] {
  return spotsOf(system).filter((spot): spot is Changeable => ["filter", "strainer"].includes(spot.part.part));
}

/**
 * What is changed: those named, or all.
 *
 * @throws InputError for a name that is none of them
 */
export function changedOf(system: System, names: readonly string[]): Changeable[] {
  const all = changeable(system);
  for (const name of names) {
    if (all.some(({ part }) => part.name === name)) continue;
    const known = all.map(({ part }) => `"${part.name}"`).join(", ");
    throw new InputError("card", "at", `a filter of ${system.name}, one of ${known}`, name);
  }
  return names.length === 0 ? all : all.filter(({ part }) => names.includes(part.name));
}

/** What a card says of one of them. */
export function elementOf(spot: Changeable, all: readonly Changeable[]): CardElement {
  const { part, side, from, to, head } = spot;
  const common = { name: part.name, side, from, to, head };
  if (part.part === "strainer") {
    const none = { beside: [], standby: [], body: null, bowl: null, prefill: null, reversed: false };
    return { ...common, ...none, style: "screen" };
  }
  const others = all.filter((one) => one.bank !== null && one.bank.part === spot.bank?.part && one.row !== spot.row);
  const named = (blocked: boolean) =>
    others.filter((one) => one.part.part === "filter" && one.part.blocked === blocked).map((one) => one.part.name);
  return {
    ...common,
    style: part.style ?? null,
    beside: named(false),
    standby: named(true),
    body: part.body ?? null,
    bowl: part.bowl ?? null,
    prefill: part.prefill ?? null,
    reversed: part.reversed,
  };
}

/** Names that `card` takes: every filter and screen of a system, in the order the fuel meets them. */
export function cardNames(system: System): string[] {
  return changeable(system).map(({ part }) => part.name);
}
