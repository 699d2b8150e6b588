/**
 * The known word nearest to a given one, if it is near enough to be meant: letters swapped, missing, doubled or mistyped,
 * at most one in three of them, and upper or lower case never counts. Where two are as near, neither is named.
 */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  // A long word is no slip of the finger, and the comparison's cost grows with the square of its length.
  if (word.length > 40) return undefined;
  let best: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    if (digitsOf(candidate) !== digitsOf(word)) continue; // "elbow 45" is no slip for "elbow 90"
    const distance = editDistance(word.toLowerCase(), candidate.toLowerCase());
    const allowed = Math.max(1, Math.floor(Math.max(word.length, candidate.length) / 3));
    if (distance > least || distance > allowed || distance >= Math.min(word.length, candidate.length)) continue;
    best = distance < least ? candidate : undefined;
    least = distance;
  }
  return best;
}

/** The known word a given one stands for: by a list of other words for it, or the nearest. */
export function meantWord(
  word: string,
  known: readonly string[],
  synonyms: Readonly<Record<string, string>>,
): string | undefined {
  return Object.hasOwn(synonyms, word) ? synonyms[word] : nearest(word, known);
}

function digitsOf(word: string): string {
  return word.replace(/\D/g, "");
}

/** How many letters must be put in, left out, changed or swapped with a neighbour to turn one word into the other. */
function editDistance(from: string, to: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let i = 1; i <= from.length; i++) {
    const row = [i];
    for (let j = 1; j <= to.length; j++) {
      const same = from[i - 1] === to[j - 1] ? 0 : 1;
      const cost = Math.min((row[j - 1] ?? 0) + 1, (last[j] ?? 0) + 1, (last[j - 1] ?? 0) + same);
      const swapped = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
      row.push(swapped ? Math.min(cost, (beforeLast[j - 2] ?? 0) + 1) : cost);
    }
    beforeLast = last;
    last = row;
  }
  return last[to.length] ?? 0;
}
