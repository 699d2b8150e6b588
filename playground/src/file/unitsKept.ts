import type { UnitSystem } from "@thirstline/study";

const KEY = "thirstline/1 units";

/** The units that were chosen on this device; metric where none were. */
export function unitsKept(): UnitSystem {
  try {
    return localStorage.getItem(KEY) === "us" ? "us" : "metric";
  } catch {
    return "metric";
  }
}

/** Keeps the units on this device; where nothing is kept they last until the page is left. */
export function keepUnits(units: UnitSystem): void {
  try {
    localStorage.setItem(KEY, units);
  } catch {
    // Refused, as in a private window.
  }
}
