/** How a machine is run. */
export interface SystemDuty {
  /** running hours in a working day, h */
  readonly hoursADay: number;
  /** working days in a year */
  readonly daysAYear: number;
  /** their shares of the year add up to 1; temperature of the fuel, K */
  readonly seasons?: readonly { readonly name: string; readonly share: number; readonly temperature: number }[];
}
