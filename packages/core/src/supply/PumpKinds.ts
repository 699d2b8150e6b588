/** No pump: the tank stands above and the whole path is gravity's. */
export interface NoPump {
  readonly kind: "none";
}

/** Fuel that slips back inside a pump, as measured once: it grows with the pressure rise and falls with viscosity. */
export interface Slip {
  /** m3/s */
  readonly flow: number;
  /** pressure rise over the pump, Pa */
  readonly rise: number;
  /** of the fuel then, Pa s */
  readonly dynamicViscosity: number;
}

/** A lift pump that moves a fixed volume a turn: gear, vane, plunger. */
export interface FixedPump {
  readonly kind: "fixed";
  /** swept flow, m3/s */
  readonly flow: number;
  readonly slip: Slip | null;
  /** pressure at which the relief valve opens, Pa: the pump's rise when it opens to the inlet, gauge when to the tank */
  readonly relief: number;
  /** where relieved fuel goes; to the tank, the suction line carries all the pump moves, whatever is burnt */
  readonly reliefTo: "inlet" | "tank";
}

/** A pump by its curve. */
export interface CurvePump {
  readonly kind: "curve";
  /** in order of flow, m3/s; the rise, Pa, never grows with flow */
  readonly points: readonly { readonly flow: number; readonly rise: number }[];
}

/** A diaphragm pump driven by crankcase pulses. */
export interface PulsePump {
  readonly kind: "pulse";
  /** most it moves against no suction, m3/s */
  readonly flow: number;
  /** most vacuum it pulls at no flow, Pa */
  readonly suction: number;
}

/** What lifts the fuel. */
export type Pump = NoPump | FixedPump | CurvePump | PulsePump;
