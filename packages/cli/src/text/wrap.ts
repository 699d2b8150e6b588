/** Width that every output fits, in characters. */
export const WIDTH = 80;

/** How wide a text stands, in characters. */
export function widthOf(text: string): number {
  return [...text].length;
}

/**
 * A text in lines no wider than the page; lines after the first are indented by `hang`. A number stays with what follows
 * it, which is its unit more often than not.
 */
export function wrap(text: string, hang = "", width = WIDTH): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.match(/(?:[^ ]*\d )?[^ ]+/g) ?? []) {
    const longer = line === "" ? `${lines.length > 0 ? hang : ""}${word}` : `${line} ${word}`;
    if (line !== "" && widthOf(longer) > width) {
      lines.push(line);
      line = `${hang}${word}`;
    } else {
      line = longer;
    }
  }
  return line === "" ? lines : [...lines, line];
}

/** A text, cut with an ellipsis where it is wider than a width. */
export function cut(text: string, width: number): string {
  const letters = [...text];
  return letters.length > width ? `${letters.slice(0, width - 1).join("")}…` : text;
}

/** A text filled up to a width on its right, or cut. */
export function left(text: string, width: number): string {
  const short = cut(text, width);
  return short + " ".repeat(width - widthOf(short));
}

/** A text filled up to a width on its left. */
export function right(text: string, width: number): string {
  return " ".repeat(Math.max(0, width - widthOf(text))) + text;
}

/** Items side by side, three spaces apart, in lines no wider than a width; none is taken apart. */
export function fill(items: readonly string[], width: number): string[] {
  const lines: string[] = [];
  for (const item of items) {
    const longer = lines.length === 0 ? item : `${lines.at(-1)}   ${item}`;
    if (lines.length > 0 && widthOf(longer) <= width) lines[lines.length - 1] = longer;
    else lines.push(item);
  }
  return lines;
}
