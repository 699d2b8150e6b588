/** How dirty and wet the fuel comes. */
export interface SystemDeliveredFuel {
  /** ISO 4406 code, such as "18/16/13", without spaces */
  readonly code?: string;
  /** solids, kg/m3; stated in place of a code */
  readonly solids?: number;
  /** water, kg/m3 */
  readonly water?: number;
}
