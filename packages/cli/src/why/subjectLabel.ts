/** How people call what an answer numbers from nought: "arrangement 0" is the first of them. */
export function subjectLabel(of: string): string {
  const [, word, at] = /^(.*) (\d+)$/.exec(of) ?? [];
  if (word === undefined) return of;
  return `${word === "pairs" ? "pair" : word} ${Number(at) + 1}`;
}
