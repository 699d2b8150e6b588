/** Ceilings at one temperature, m3/s; what is known of the second at both ends. */
export interface MapPoint {
  /** K */
  readonly temperature: number;
  /** largest demand with room for soil */
  readonly clean: number;
  /** largest demand at all, at the bad and the good end of what is known */
  readonly atChange: { readonly low: number; readonly high: number };
  /** whether no figure is a promise there: wax, or a fuel outside its data */
  readonly unsure: boolean;
}
