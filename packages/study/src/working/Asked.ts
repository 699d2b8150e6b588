/** What figures are asked with, in SI; what is left out is the file's own, or the command's. */
export interface Asked {
  /** fuel temperature, K */
  readonly temperature?: number;
  /** demand, burn and return together, m3/s */
  readonly demand?: number;
  /** a demand of the curve, m3/s: what gauges read there, with elements due as at the demand itself */
  readonly at?: number;
  /** where the curve ends, m3/s, and how many points it has */
  readonly to?: number;
  readonly points?: number;
  /** which moment of a life's trace, from 0 */
  readonly moment?: number;
  /** a running time on the way of a life, s, where no moment of its trace is asked for */
  readonly after?: number;
  /** how often what is uncertain is drawn */
  readonly draws?: number;
  readonly seed?: number;
}
