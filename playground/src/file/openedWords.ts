/** What there is to know about a system that was opened: what its file does not say and was taken, and what it assumes. */
export function openedWords(
  file: string,
  cautions: readonly { readonly message: string }[],
  notes: readonly string[] = [],
): string {
  const taken = cautions.map(({ message }) => message).join("; ");
  const said = taken === "" ? [] : [`Taken for granted in ${file}: ${taken}.`];
  return [...said, ...notes.map((note) => `Assumed in ${file}, not tested: ${note}`)].join(" ");
}
