import type { FuelState } from "../../fuel/index.js";
import type { BandEnd } from "../Band.js";
import type { Filter } from "../filter/index.js";
import type { Fitting } from "../fitting.js";
import type { Passage } from "../friction/index.js";
import type { Orifice } from "../orifice.js";
import type { Part } from "../Part.js";
import { FREE_FALL } from "../rise.js";
import type { Valve } from "../valve.js";
import { PipeLaw } from "./PipeLaw.js";
import { StrainerLaw } from "./StrainerLaw.js";
import type { Terms } from "./Terms.js";

/** Under what a circuit is solved: the fuel, and which reading of what is uncertain. */
export interface Setting {
  readonly fuel: FuelState;
  readonly passage: Passage;
  readonly end: BandEnd;
}

/** Adds what one part costs to the terms of its run. */
export function addPart(part: Part, { fuel, passage, end }: Setting, terms: Terms): void {
  switch (part.kind) {
    case "line":
      terms.own.push(new PipeLaw(part, fuel, passage));
      break;
    case "fitting":
      addFitting(part, fuel, passage, terms);
      break;
    case "filter":
      addFilter(part, fuel, end, terms);
      break;
    case "rise":
      terms.constant += fuel.density * FREE_FALL * part.height;
      break;
    case "valve":
      addValve(part, fuel, terms);
      break;
    case "orifice":
      addOrifice(part, fuel, terms);
      break;
    case "strainer":
      terms.own.push(new StrainerLaw(part, fuel, end));
      break;
  }
}

/** One velocity head per flow squared, Pa s2/m6: density / (2 area^2). */
function velocityHead(bore: number, density: number): number {
  const area = (Math.PI / 4) * bore * bore;
  return density / (2 * area * area);
}

function addFitting(part: Fitting, fuel: FuelState, passage: Passage, terms: Terms): void {
  const { bore, count, loss } = part;
  const head = count * velocityHead(bore, fuel.density);
  switch (loss.by) {
    case "k":
      terms.quadratic += loss.k * head;
      break;
    case "two-K":
      terms.quadratic += loss.kInfinity * (1 + 0.0254 / bore) * head;
      // K1/Re velocity heads, Re = 4 flow / (pi bore viscosity), is linear in flow
      terms.linear += (loss.k1 * Math.PI * bore * fuel.kinematicViscosity * head) / 4;
      break;
    case "equivalent length":
      terms.own.push(
        new PipeLaw({ length: count * loss.bores * bore, bore, roughness: loss.roughness }, fuel, passage),
      );
  }
}

function addFilter(part: Filter, fuel: FuelState, end: BandEnd, terms: Terms): void {
  if (part.blocked || part.restriction === Infinity) {
    terms.shut = true;
    return;
  }
  const dynamicViscosity = fuel.density * fuel.kinematicViscosity;
  terms.media.push({
    name: part.name ?? "",
    clean: dynamicViscosity * part.medium.linear[end],
    restriction: part.restriction,
  });
  terms.linear += dynamicViscosity * part.channels;
  terms.quadratic += fuel.density * part.medium.quadratic;
  if (part.housing) terms.quadratic += part.housing.k * velocityHead(part.housing.port, fuel.density);
}

function addValve(part: Valve, fuel: FuelState, terms: Terms): void {
  // Kv is stated for water of 1000 kg/m3 at 1 bar.
  terms.quadratic += (1e5 * (fuel.density / 1000)) / part.kv ** 2;
  terms.opening += part.opening;
  terms.oneWay ||= part.oneWay;
}

function addOrifice(part: Orifice, fuel: FuelState, terms: Terms): void {
  terms.quadratic += velocityHead(part.diameter, fuel.density) / part.dischargeCoefficient ** 2;
}
