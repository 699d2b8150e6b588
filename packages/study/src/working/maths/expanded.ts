/** How many values each letter that stands for a list has. */
export type ListSizes = Readonly<Record<string, number>>;

/**
 * The text of a formula with its lists written out: `sum(n * d)` over two values each is `(n_1 * d_1 + n_2 * d_2)`, and
 * `min(d)` is `min(d_1, d_2)`.
 */
export function expanded(text: string, sizes: ListSizes): string {
  const letters = Object.keys(sizes);
  if (letters.length === 0) return text;
  return text.replace(/\b(sum|min|max)\(((?:[^()]|\([^()]*\))*)\)/g, (whole, name: string, inside: string) => {
    const used = letters.filter((letter) => new RegExp(`\\b${letter}\\b`).test(inside));
    const size = sizes[used[0] ?? ""];
    if (size === undefined) return whole;
    const terms = Array.from({ length: size }, (_, at) =>
      used.reduce((term, letter) => term.replace(new RegExp(`\\b${letter}\\b`, "g"), `${letter}_${at + 1}`), inside),
    );
    return name === "sum" ? `(${terms.join(" + ")})` : `${name}(${terms.join(", ")})`;
  });
}
