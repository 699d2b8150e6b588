import mathjs from "#mathjs";
import { addedUnits, refinedUnits } from "./tradeUnits.js";

/** A unit expression as the parser holds it; only what is used here. */
export interface ParsedUnit {
  equalBase(other: ParsedUnit): boolean;
}

interface UnitValue extends ParsedUnit {
  toNumber(unit: string): number;
}

/** The unit parser's class: `parse` reads a unit expression, `new` puts a number to one. */
interface UnitClass {
  new (value: number, unit: ParsedUnit): UnitValue;
  parse(text: string): ParsedUnit;
  createUnitSingle(name: string, definition: string): unknown;
  readonly UNITS: Record<string, { value: number }>;
}

/** All the arithmetic the unit class needs for plain numbers; mathjs's own does matrices, and takes 0.1 s to set up. */
const plainArithmetic = {
  addScalar: (left: number, right: number) => left + right,
  subtractScalar: (left: number, right: number) => left - right,
  multiplyScalar: (left: number, right: number) => left * right,
  divideScalar: (left: number, right: number) => left / right,
  pow: (base: number, exponent: number) => base ** exponent,
  abs: Math.abs,
  fix: Math.trunc,
  round: Math.round,
  equal: (left: number, right: number) => left === right,
  isNumeric: (value: unknown) => typeof value === "number",
  format: String,
  number: Number,
};

/**
 * Makes the unit class, and nothing else of mathjs: an instance makes its parts when they are first asked for, out of what
 * it then holds. The instance is ours, so nobody else's settings reach it, and only the unit class leaves this file. In
 * Node "#mathjs" is mathjs's single-file build, which loads six times faster than its thousand modules.
 */
function makeUnitClass(): UnitClass {
  return Object.assign(mathjs.create(), plainArithmetic).Unit as UnitClass;
}

function withTradeUnits(unitClass: UnitClass): UnitClass {
  for (const { name, si, value } of addedUnits) unitClass.createUnitSingle(name, `${value} ${si}`);
  // createUnitSingle goes through text and a product; the stored size is set again so that no rounding is left in it.
  for (const { name, value } of [...addedUnits, ...refinedUnits]) {
    const unit = unitClass.UNITS[name];
    if (unit !== undefined) unit.value = value;
  }
  return unitClass;
}

const Unit = withTradeUnits(makeUnitClass());

const parsed = new Map<string, ParsedUnit>();

/** Reads a unit expression that has already been checked word by word, such as "mm^2/s". */
export function parseUnit(expression: string): ParsedUnit {
  let unit = parsed.get(expression);
  if (unit === undefined) {
    unit = Unit.parse(expression);
    // Bounded: a long-lived process that reads hostile files must not grow.
    if (parsed.size >= 500) parsed.clear();
    parsed.set(expression, unit);
  }
  return unit;
}

const factors = new WeakMap<ParsedUnit, number>();

/**
 * The number in SI of so many of a unit; the caller has checked that the dimensions agree. `si` is a coherent SI unit.
 */
export function toSi(value: number, unit: ParsedUnit, si: string): number {
  if (si === "K") return new Unit(value, unit).toNumber(si); // the scales' zeros differ
  let factor = factors.get(unit);
  if (factor === undefined) {
    factor = new Unit(1, unit).toNumber(si);
    factors.set(unit, factor);
  }
  // Most units are a whole number of times smaller than SI's: dividing by that number rounds once, where the product
  // with its rounded inverse would round twice ("10 um" came out as 0.000009999999999999999 m).
  const inverse = Math.round(1 / factor);
  return factor < 1 && Math.abs(1 / factor / inverse - 1) < 1e-15 ? value / inverse : value * factor;
}

/** As `toSi`, of a difference: where a temperature scale begins does not count, so 5 degC is 5 K and 9 degF is 5 K. */
export function differenceToSi(value: number, unit: ParsedUnit, si: string): number {
  if (si !== "K") return toSi(value, unit, si);
  const steps = 180; // from freezing to boiling in degF, so that neither scale's size is rounded
  return (value * (toSi(steps, unit, si) - toSi(0, unit, si))) / steps;
}
