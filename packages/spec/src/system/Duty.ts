/** How a machine is run. */
export interface SystemDuty {
  /** running hours in a working day, h */
  readonly hoursADay: number;
  /** working days in a year */
  readonly daysAYear: number;
  /** distance in a year, m */
  readonly distance?: number;
  /** day the elements are new, as "2026-03-01": the first day of the first season */
  readonly starts?: string;
  /** load over the full demand, above 0 to 1, and its share of the running time; the shares add up to 1 */
  readonly loads?: readonly { readonly load: number; readonly share: number }[];
  /** one after another as listed; their shares of the year add up to 1; temperature of the fuel, K */
  readonly seasons?: readonly { readonly name: string; readonly share: number; readonly temperature: number }[];
}
