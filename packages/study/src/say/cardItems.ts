import type { CardElement, CardItem } from "../card/CardAnswer.js";
import { namesWords } from "./namesWords.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";
import type { Words } from "./words.js";

/** A note to read. */
export const note = (words: Words): CardItem => ({ kind: "note", words });

/** A step to tick. */
export const step = (words: Words): CardItem => ({ kind: "step", words });

/** A short field to fill in by hand, two to a row. */
export const field = (words: Words): CardItem => ({ kind: "field", words });

/** A whole line to fill in by hand. */
export const line = (words: Words): CardItem => ({ kind: "line", words });

/** A volume as a bench knows it: small ones in millilitres or fluid ounces. */
export function volumeText(volume: number, units: UnitSystem): string {
  return quantity(volume, volume < SMALL ? "small volume" : "volume", units);
}

/** Under a litre, m3. */
const SMALL = 0.9995e-3;

/** Elements built alike, in the order they are met. */
export function byStyle(
  elements: readonly CardElement[],
): { readonly style: CardElement["style"]; readonly names: string }[] {
  const styles = [...new Set(elements.map(({ style }) => style))];
  return styles.map((style) => ({
    style,
    names: namesWords(elements.filter((one) => one.style === style).map(({ name }) => name)),
  }));
}

/** What a style is called in a sentence. */
export const styleWords: Readonly<Record<NonNullable<CardElement["style"]>, string>> = {
  "spin-on": "spin-on",
  cartridge: "cartridge",
  "in-line": "in-line",
  bowl: "bowl",
  "in-tank": "in the tank",
  screen: "screen, to be cleaned",
};
