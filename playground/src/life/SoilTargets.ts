/** Where soil leads: how far each filter has closed when all are due. */
export interface SoilTargets {
  /** what life predicts; or, where it cannot say, all filters alike */
  readonly by: "life" | "alike";
  /** resistance over clean, by name */
  readonly due: readonly (readonly [name: string, restriction: number])[];
}
