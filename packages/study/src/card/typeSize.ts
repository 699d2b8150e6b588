import type { CardItem, CardSection } from "./CardAnswer.js";

/** The largest type, and the smallest that is read at arm's length, pt. */
const LARGEST = 10;
const SMALLEST = 7.6;

/** What is left of the narrower of A4 and US Letter between margins, and of the lower, pt. */
const SHEET = { width: 538, height: 746 };

/** Mean width of a letter over the type's size, of Open Sans, the widest of the faces named; as measured on the
 * demonstration cards, with a fifth of a point to spare. */
const LETTER = 0.45;

/** Height of a line over the type's size, as the style sets it. */
export const LINE = 1.28;

/**
 * Type as large as lets a card stand on one sheet, A4 or US Letter, pt: its lines are counted as a printer would break them,
 * at ever smaller sizes. Never under what can be read at arm's length, so a very long card goes on to a second sheet.
 */
export function typeSize(sections: readonly CardSection[]): number {
  for (let tenths = LARGEST * 10; tenths > SMALLEST * 10; tenths -= 1) {
    if (heightAt(tenths / 10, sections) <= SHEET.height) return tenths / 10;
  }
  return SMALLEST;
}

function heightAt(size: number, sections: readonly CardSection[]): number {
  const [cautions, ...rest] = sections;
  const column = (SHEET.width - 18) / 2;
  const boxed = cautions ? sectionHeight(cautions, size, column - 14) / 2 + 1.4 * size + 12 : 0;
  const columns = rest.reduce((sum, section) => sum + sectionHeight(section, size, column), 0);
  // A line more: no column ends just where the other does.
  return 3.1 * size + 14 + boxed + columns / 2 + LINE * size;
}

function sectionHeight({ items }: CardSection, size: number, width: number): number {
  const fields =
    items.filter(({ kind }) => kind === "field").length + 2 * items.filter(({ kind }) => kind === "line").length;
  const lines = items.reduce((sum, item) => sum + itemHeight(item, size, width), 0);
  return 1.3 * size + 9 + lines + Math.ceil(fields / 2) * 2 * size;
}

function itemHeight({ kind, words }: CardItem, size: number, width: number): number {
  if (kind === "field" || kind === "line") return 0;
  const letters = words.reduce((sum, piece) => sum + (typeof piece === "string" ? piece : piece.text).length, 0);
  const room = kind === "step" ? width - 1.75 * size : width;
  // The last word of a line goes over as often as not.
  const lines = Math.ceil((letters * LETTER * size) / (room - size));
  return lines * LINE * size + 1.4;
}
