import type { CaptureCaution, HeldFixed, UnknownCapture } from "@thirstline/core";

/** Why nothing can be said of how long elements last. */
export type LifeReason =
  /** nothing passes, so nothing fills: by this part, or the tank vent */
  | { readonly code: "shut"; readonly by: string }
  | { readonly code: "no delivered fuel" }
  | { readonly code: "no duty" }
  | { readonly code: "no service interval" }
  | { readonly code: "no filter" }
  /** the stated solids give no sizes */
  | { readonly code: "no solids"; readonly why: string }
  | { readonly code: "no growing element" }
  /** no data back the fuel at any temperature of the duty */
  | { readonly code: "no temperature to judge" }
  /** what is only estimated decides: from this to that running time, s (null beyond the horizon) */
  | { readonly code: "unsettled"; readonly early: number; readonly late: number | null };

/** What the figures rest on. */
export type LifeCaution =
  | { readonly code: "capacity assumed"; readonly element: string }
  | { readonly code: "law assumed"; readonly element: string; readonly law: string }
  | { readonly code: "tests fit no law"; readonly element: string; readonly law: string; readonly why: string }
  /** its flow test leaves the medium no linear part, and soil multiplies that part alone */
  | { readonly code: "nothing to multiply"; readonly element: string }
  | { readonly code: "no capacity"; readonly element: string }
  | { readonly code: "capture unknown"; readonly element: string; readonly why: UnknownCapture["reason"] }
  | { readonly code: "capture"; readonly element: string; readonly caution: CaptureCaution }
  | { readonly code: "extrapolated"; readonly share: number }
  | { readonly code: "season not judged"; readonly season: string; readonly temperature: number }
  /** at every temperature of the duty, K, all year round */
  | { readonly code: "judged at the worst"; readonly coldest: number }
  | { readonly code: "full load assumed" }
  | { readonly code: "held"; readonly held: HeldFixed }
  /** one dirtier delivery is counted: after a running time, s, so much fuel, m3 */
  | { readonly code: "dirty delivery"; readonly after: number; readonly volume: number }
  | { readonly code: "starts full of soil"; readonly element: string }
  /** absorbs water at a share nobody stated, so all of the free water is taken to stay in it */
  | { readonly code: "absorbs all"; readonly element: string };
