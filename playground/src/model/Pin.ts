import type { System } from "@thirstline/spec/system";
import type { Answers } from "./answersOf.js";

/** A variant set aside to compare with. */
export interface Pin {
  /** A letter, as the table and the chart call it */
  readonly name: string;
  readonly system: System;
  readonly answers: Answers;
}

/** Most variants that can be told apart at a glance. */
export const MOST_PINS = 3;

/** The first letter no pin has. */
export function freeLetter(pins: readonly Pin[]): string {
  const letters = ["A", "B", "C", "D"];
  return letters.find((letter) => !pins.some(({ name }) => name === letter)) ?? "E";
}
