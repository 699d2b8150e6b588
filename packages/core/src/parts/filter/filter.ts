import { InputError } from "../../InputError.js";
import { requireAtLeast, requireMoreThan } from "../../require.js";
import { type Named, nameOf } from "../Named.js";
import { type AirTest, fromAirTest } from "./fromAirTest.js";
import { type FibreMat, fromFibres } from "./fromFibres.js";
import { fromOnePoint, fromTwoPoints, type OnePointTest, type TwoPointTest } from "./fromFlowTest.js";
import { fromGeometry, type MediumGeometry } from "./fromGeometry.js";
import { fromRating, type Rating } from "./fromRating.js";
import type { Medium } from "./Medium.js";
import { type Pleats, pleatResistance } from "./pleatResistance.js";

/** The passages of a filter's body. */
export interface Housing {
  /** loss in velocity heads at the port */
  readonly k: number;
  /** bore of the port, m */
  readonly port: number;
}

/** A fuel filter: a medium, and where stated its housing and pleats. */
export interface Filter extends Named {
  readonly kind: "filter";
  readonly medium: Medium;
  readonly housing: Housing | null;
  /** resistance of the pleat channels, 1/m3; 0 when no pleats are stated */
  readonly channels: number;
  /** resistance of the medium over its clean resistance: 1 clean, Infinity plugged */
  readonly restriction: number;
  /** shut off, as one side of a duplex may be */
  readonly blocked: boolean;
  /** fitted against its flow arrow: its drop is taken as the same, its capture as unknown */
  readonly reversed: boolean;
}

/** What `filter` takes: exactly one source for the medium, the rest as known. */
export interface FilterGiven extends Named {
  readonly clean?: OnePointTest;
  readonly test?: TwoPointTest;
  readonly media?: MediumGeometry;
  readonly airTest?: AirTest;
  readonly fibre?: FibreMat;
  readonly rating?: Rating;
  /** adds to a medium tested or known without its body */
  readonly housing?: Housing;
  /** adds to a medium known as a flat sheet */
  readonly pleats?: Pleats;
  readonly restriction?: number;
  readonly blocked?: boolean;
  readonly reversed?: boolean;
}

/**
 * A filter. Twice the area halves what the medium costs; a pore half as wide costs four times as much.
 *
 * The medium follows Darcy's law (with a quadratic term where a two-point test or an inertial coefficient gives one),
 * the housing a constant K. Soil multiplies the medium's linear term only: body and inertia do not grow with it.
 *
 * @param given see `FilterGiven`
 * @throws InputError naming the field, also when no or several sources are given for the medium
 * @example
 * filter({ clean: { drop: 1500, flow: 5e-5, dynamicViscosity: 0.0035 } })
 */
export function filter(given: FilterGiven): Filter {
  const restriction = given.restriction ?? 1;
  if (!(restriction >= 1)) throw new InputError("filter", "restriction", "at least 1", restriction);
  if (given.housing) {
    requireAtLeast("filter", "housing.k", given.housing.k, 0);
    requireMoreThan("filter", "housing.port", given.housing.port, 0, "m");
  }
  return {
    kind: "filter",
    ...nameOf(given),
    medium: mediumOf(given),
    housing: given.housing ? { k: given.housing.k, port: given.housing.port } : null,
    channels: given.pleats ? pleatResistance(given.pleats) : 0,
    restriction,
    blocked: given.blocked ?? false,
    reversed: given.reversed ?? false,
  };
}

function mediumOf(given: FilterGiven): Medium {
  const found: Medium[] = [];
  if (given.clean) found.push(fromOnePoint(given.clean));
  if (given.test) found.push(fromTwoPoints(given.test));
  if (given.media) found.push(fromGeometry(given.media));
  if (given.airTest) found.push(fromAirTest(given.airTest));
  if (given.fibre) found.push(fromFibres(given.fibre));
  if (given.rating) found.push(fromRating(given.rating));
  const [medium] = found;
  if (!medium || found.length > 1) {
    const sources = found.map((one) => one.source).join(" and ") || "none";
    throw new InputError("filter", "the medium", "given once: clean, test, media, airTest, fibre or rating", sources);
  }
  return medium;
}
