/** Colours and face of the page, read from it so that they follow light, dark, contrast and paper. */
export interface Inks {
  readonly ink: string;
  readonly soft: string;
  readonly rule: string;
  readonly limit: string;
  readonly fuel: string;
  readonly wash: string;
  readonly paper: string;
  readonly face: string;
}

/** The inks an element is drawn in. */
export function inksOf(element: Element): Inks {
  const styles = getComputedStyle(element);
  const of = (name: string) => styles.getPropertyValue(`--${name}`).trim();
  return {
    ink: of("ink"),
    soft: of("soft"),
    rule: of("rule"),
    limit: of("limit"),
    fuel: of("fuel"),
    wash: of("wash"),
    paper: of("paper"),
    face: of("face"),
  };
}
