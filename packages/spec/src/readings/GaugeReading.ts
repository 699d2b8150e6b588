/** What somebody noted at a machine, in SI; what is left out was not noted. */
export interface GaugeReading {
  /** which reading it is, from 1, as its file or command line has them */
  readonly row: number;
  /** line of its file; null for one typed by itself */
  readonly line: number | null;
  /** hour meter, s; one of `hours` and `date` is there */
  readonly hours?: number;
  /** day, as "2026-03-01" */
  readonly date?: string;
  /** vacuum at the lift pump's inlet, Pa; below zero where the fuel stands above; with no pump, at the engine */
  readonly vacuum?: number;
  /** gauge pressure at the injection pump, Pa; with no pump, at the engine */
  readonly feedPressure?: number;
  /** share of the full demand, more than 0 */
  readonly load?: number;
  /** demand, burn and return together, m3/s */
  readonly flow?: number;
  /** of the fuel, K */
  readonly temperature?: number;
  /** fuel over the pick-up, m */
  readonly depth?: number;
  /** whether the elements were changed just before it */
  readonly changed: boolean;
  /** in the words of whoever noted it */
  readonly note?: string;
}
