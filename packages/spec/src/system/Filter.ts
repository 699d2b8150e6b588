import type { LoadingLawName, MediumMake } from "@thirstline/core";

/** One point of a flow test of a clean filter. */
export interface SystemFlowPoint {
  /** Pa */
  readonly drop: number;
  /** m3/s */
  readonly flow: number;
}

/** Where the figures of a filter's medium come from; a filter has exactly one such source. */
export type SystemMedium =
  /** a flow test of the clean element; one point fixes the linear term only, two fix both */
  | {
      readonly by: "flow test";
      /** one or two, the smaller flow first */
      readonly points: readonly SystemFlowPoint[];
      /** of the test fluid, Pa s */
      readonly dynamicViscosity: number;
      /** of the test fluid, kg/m3; always there with two points */
      readonly density?: number;
    }
  /** its geometry: area, m2; thickness, m; permeability, m2; Forchheimer's inertial coefficient, 1/m */
  | {
      readonly by: "medium";
      readonly area: number;
      readonly thickness: number;
      readonly permeability: number;
      readonly inertia?: number;
    }
  /** air through a sample: flow, m3/s; area of the sample, m2; pressure, Pa; area of the medium in the element, m2 */
  | {
      readonly by: "air test";
      readonly flow: number;
      readonly sampleArea: number;
      readonly pressure: number;
      readonly area: number;
    }
  /** an estimate from a rating: size, m; how the rating was stated; area of the medium, m2; its thickness, m */
  | {
      readonly by: "rating";
      readonly size: number;
      readonly kind: SystemRatingKind;
      readonly area: number;
      readonly thickness: number;
    }
  /** an estimate from the fibres: diameter, m; share of the volume that is fibre; area, m2, and thickness, m, of the mat */
  | {
      readonly by: "fibre";
      readonly diameter: number;
      readonly solidity: number;
      readonly area: number;
      readonly thickness: number;
    };

/** A beta ratio at a size. */
export interface SystemBeta {
  /** particle size, m (as ISO 11171 counts it) */
  readonly size: number;
  /** particles of that size and up before the filter over those behind it; 1 or more */
  readonly beta: number;
}

/** How much soil an element took in a capacity test. */
export interface SystemCapacityTest {
  /** soil caught, kg */
  readonly soil: number;
  /** how much the drop had risen then, Pa */
  readonly rise: number;
  /** m3/s */
  readonly flow: number;
  /** of the test fluid, Pa s */
  readonly dynamicViscosity: number;
  /** of the test fluid, kg/m3 */
  readonly density?: number;
}

/** Water that an element took up, kg, and how far it had closed then: its resistance over clean, or its drop's rise. */
export type SystemAbsorber =
  /** resistance over the clean resistance, more than 1 */
  | { readonly water: number; readonly restriction: number }
  /** rise, Pa, at a flow, m3/s, of a fluid of a dynamic viscosity, Pa s, and density, kg/m3 */
  | {
      readonly water: number;
      readonly rise: number;
      readonly flow: number;
      readonly dynamicViscosity: number;
      readonly density?: number;
    };

/** How a maker's rating was stated. */
export type SystemRatingKind = "nominal" | "absolute" | "beta 75" | "beta 200" | "beta 1000";

/** Which way fuel goes through an element. */
export type FlowDirection = "outside in" | "inside out";

/** A fuel filter. */
export interface SystemFilter {
  readonly part: "filter";
  /** no two filters of a system share a name */
  readonly name: string;
  /** how it is built, which decides how it is changed */
  readonly style?: "spin-on" | "cartridge" | "in-line" | "bowl" | "in-tank";
  /** thread or port by which the element is held, as its maker writes it */
  readonly thread?: string;
  readonly direction?: FlowDirection;
  readonly medium: SystemMedium;
  /** area of the medium, m2, stated by itself or with the medium */
  readonly area?: number;
  /** the body's loss in velocity heads at its port, and the port's bore, m */
  readonly housing?: { readonly k: number; readonly port: number };
  /** depth of a fold, m; gap between two walls, m; area of the medium, m2 */
  readonly pleats?: { readonly depth: number; readonly gap: number; readonly area: number };
  /** resistance of the medium over its clean resistance, 1 or more; clean when left out */
  readonly restriction?: number;
  /** shut off, as one side of a duplex may be */
  readonly blocked: boolean;
  /** fitted against its flow arrow */
  readonly reversed: boolean;
  /** drop at which the element is to be changed, Pa */
  readonly terminalDrop?: number;
  /** by rising size */
  readonly betas?: readonly SystemBeta[];
  /** what its maker says of its fineness, beside a medium that does not come of it: size, m (as ISO 11171 counts it) */
  readonly statedRating?: { readonly size: number; readonly kind: SystemRatingKind };
  /** share of the flow that slips past the seal, 0 to 1 */
  readonly leak?: number;
  /** the test that went to the most soil */
  readonly capacityTest?: SystemCapacityTest;
  /** a second test that ended with less soil */
  readonly lighterCapacityTest?: SystemCapacityTest;
  /** which law its restriction grows by, when the file says so; a law of two constants goes through two tests */
  readonly loadingLaw?: LoadingLawName;
  /** what the medium is made of */
  readonly make?: MediumMake;
  /** volume of the bowl up to where it must be drained, m3 */
  readonly bowl?: number;
  /** fuel in its body and bowl with the element in, which runs out when it is opened, m3 */
  readonly body?: number;
  /** what its maker's manual says of filling it before it is fitted */
  readonly prefill?: "allowed" | "forbidden";
  /** share of the free water it separates, 0 to less than 1, at a flow, m3/s */
  readonly separation?: { readonly efficiency: number; readonly flow: number };
  readonly absorbs?: SystemAbsorber;
}
