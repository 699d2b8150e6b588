import type { SystemFilter } from "@thirstline/spec/system";

/** An element to change, or a screen to clean, and where it stands. */
export interface CardElement {
  readonly name: string;
  /** how it is built; null where the file does not say */
  readonly style: NonNullable<SystemFilter["style"]> | "screen" | null;
  readonly side: "suction" | "delivery";
  /** what the fuel comes from, and what it goes on to: the neighbours of its IN and OUT */
  readonly from: string;
  readonly to: string;
  /** elements of the same bank that fuel can go through meanwhile, and those that are shut off */
  readonly beside: readonly string[];
  readonly standby: readonly string[];
  /** how high the fuel of a full tank stands over it, m; negative where the tank lies below */
  readonly head: number;
  /** fuel in its body, its bowl, m3; null where the file does not say */
  readonly body: number | null;
  readonly bowl: number | null;
  readonly prefill: SystemFilter["prefill"] | null;
  /** whether the file has it fitted against its flow arrow now */
  readonly reversed: boolean;
}

/** Fuel that runs out, or air that comes in instead, m3. */
export interface CardVolumes {
  /** of the bodies that are stated; of one without, its bowl */
  readonly bodies: number;
  /** elements whose body is not stated */
  readonly unknown: readonly string[];
  /** of the lines beside the elements, should they run empty as well */
  readonly lines: number;
}

/** How the air is got out again. */
export interface CardPriming {
  /** elements that may be filled before they are fitted, that may not, and of which nobody says */
  readonly allowed: readonly string[];
  readonly forbidden: readonly string[];
  readonly assumed: readonly string[];
  /** whether the asker said that the manual allows it */
  readonly saidAllowed: boolean;
  /** what a stroke of the hand primer sweeps, m3, and the share of it that moves; null where not stated */
  readonly stroke: number | null;
  readonly fill: number;
  /** air to move, m3: of the bodies fitted dry; with the lines beside them run empty as well */
  readonly least: number;
  readonly most: number;
  /** strokes for both; null where no stroke is stated */
  readonly strokes: { readonly least: number; readonly most: number } | null;
  /** elements fitted dry whose volume is not stated, so that both are more */
  readonly unknown: readonly string[];
}
