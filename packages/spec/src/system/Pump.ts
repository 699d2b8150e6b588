/** What lifts the fuel. */
export type SystemPump =
  /** nothing: the tank stands above, and the whole path is under `suction` */
  | { readonly kind: "none" }
  /** a pump that moves a fixed volume */
  | {
      readonly kind: "fixed";
      /** swept flow, m3/s */
      readonly flow: number;
      /** slip as measured once: flow, m3/s, at a pressure rise, Pa, with fuel of a dynamic viscosity, Pa s */
      readonly slip?: { readonly flow: number; readonly rise: number; readonly dynamicViscosity: number };
      /** pressure at which relief opens, Pa */
      readonly relief: number;
      /** where relieved fuel goes */
      readonly reliefTo: "inlet" | "tank";
    }
  /** a pump by points of flow, m3/s, and pressure rise, Pa, in order of flow */
  | { readonly kind: "curve"; readonly points: readonly { readonly flow: number; readonly rise: number }[] }
  /** a diaphragm pump driven by crankcase pulses: most flow, m3/s, and most vacuum, Pa */
  | { readonly kind: "pulse"; readonly flow: number; readonly suction: number };
