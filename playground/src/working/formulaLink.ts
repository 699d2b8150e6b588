/** The address of a formula's page, or of a topic's. */
export function formulaLink(id: string): string {
  // In full: a bare fragment reads as a way to skip within what is shown.
  return `${location.href.replace(/#.*$/, "")}#formulas/${id}`;
}
