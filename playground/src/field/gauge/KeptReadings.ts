/** Readings of one machine as they are kept on the device. */
export interface KeptReadings {
  /** a table, as `readReadings` reads it */
  readonly text: string;
  /** resistance over clean that was put on the sheet from them, by the filter's name; the gauge is read without it */
  readonly put: readonly (readonly [string, number])[];
}
