import { bandText, figure, type QuantityKind, quantity, type UnitSystem, unitOf } from "@thirstline/study";
import { html, type TemplateResult } from "lit";

type Band = Parameters<typeof bandText>[0];

/** A computed figure in a lesson's text: SI, shown in the reader's units; "times" is a bare factor of three digits at most. */
export interface Measure {
  readonly value: number | Band;
  readonly kind: QuantityKind | "times";
}

/** What a system file calls something, such as "prefilter P30" or a cleanliness code. */
export interface Named {
  readonly name: string;
}

/** Text with computed figures in it. The plain strings are what an author typed, and hold no figure. */
export type Words = readonly (string | Measure | Named)[];

/** Puts text together from a template; what stands in it is a figure, a name or more text, never a typed number. */
export function text(strings: TemplateStringsArray, ...pieces: readonly (Measure | Named | Words)[]): Words {
  return strings.flatMap((typed, at): Words => {
    const piece = pieces[at];
    const own: Words = typed === "" ? [] : [typed];
    if (piece === undefined) return own;
    return Array.isArray(piece) ? [...own, ...(piece as Words)] : [...own, piece as Measure | Named];
  });
}

/** A figure of a kind, SI. */
export function of(value: number | Band, kind: Measure["kind"]): Measure {
  return { value, kind };
}

/** A factor: "4 times" is `${times(4)} times`. */
export function times(value: number): Measure {
  return { value, kind: "times" };
}

export function named(name: string): Named {
  return { name };
}

/** One piece as it is read. */
function pieceText(piece: Words[number], units: UnitSystem): string {
  if (typeof piece === "string") return piece;
  if ("name" in piece) return piece.name;
  const { value, kind } = piece;
  if (typeof value !== "number") return bandText(value, kind === "times" ? "plain" : kind, units);
  if (kind === "times") return String(Number(value.toPrecision(3)));
  // A share such as one particle in a thousand needs its decimals; the answers' own percentages need none.
  if (kind === "ratio" && value > 0 && value < 0.095) return `${Number((value * 100).toPrecision(2))} %`;
  return kind === "plain" ? bare(figure(value, kind, units)) : withUnit(value, kind, units);
}

/** As the answers say it, but sizes without idle zeros, and two digits of a pressure that has only one there. */
function withUnit(value: number, kind: QuantityKind, units: UnitSystem): string {
  const { size, symbol } = unitOf(kind, units);
  if (kind === "particle size") return `${bare(figure(value, kind, units))} ${symbol}`;
  const isPressure = kind === "pressure" || kind === "vacuum";
  if (isPressure && Math.abs(value / size) < 0.95) return `${Number((value / size).toPrecision(2))} ${symbol}`;
  return quantity(value, kind, units);
}

function bare(shown: string): string {
  return shown.replace(/\.0+$/, "");
}

export function plainText(words: Words, units: UnitSystem): string {
  return words.map((piece) => pieceText(piece, units)).join("");
}

/** Text on the page: figures stand out and do not break. */
export function wordsOf(words: Words, units: UnitSystem): TemplateResult {
  return html`${words.map((piece) =>
    typeof piece === "string" || "name" in piece
      ? pieceText(piece, units)
      : html`<b class="figure">${pieceText(piece, units)}</b>`,
  )}`;
}
