/** A live figure inside a sentence: which one it is, and how it reads. */
export interface Figure {
  readonly figure: string;
  readonly text: string;
  /** which of the systems compared it belongs to, as workings name them; left out where there is one */
  readonly of?: string;
}

/** A sentence in pieces, so that a page can make its figures open their working. */
export type Words = readonly (string | Figure)[];

/** Names a figure inside `say`. */
export function fig(figure: string, text: string): Figure {
  return { figure, text };
}

/** Puts a sentence together from a template; nested words are taken apart. */
export function say(strings: TemplateStringsArray, ...pieces: readonly (string | Figure | Words)[]): Words {
  return strings.flatMap((text, at) => {
    const piece = pieces[at];
    const own: Words = text === "" ? [] : [text];
    if (piece === undefined) return own;
    return Array.isArray(piece) ? [...own, ...(piece as Words)] : [...own, piece as string | Figure];
  });
}

/** The sentence as plain text. */
export function plain(words: Words): string {
  return words.map((piece) => (typeof piece === "string" ? piece : piece.text)).join("");
}
