import type { System, SystemPart } from "@thirstline/spec/system";
import { partsIn } from "../model/parts.js";
import { freshName, namesIn } from "./names.js";

/** What can be added to a path, by the words on its button. */
export const newParts = ["Line", "Elbow", "Filter", "Rise", "Check valve", "Strainer", "Orifice"] as const;
export type NewPart = (typeof newParts)[number];

const LITRE_AN_HOUR = 1e-3 / 3600;

/**
 * A part to start from, of the bore its neighbours have, under a name of its own. Its figures are only a beginning, to
 * be put right in the boxes: usual sizes, common practice, no source.
 */
export function newPart(kind: NewPart, system: System): SystemPart {
  const bore = boreNear(system);
  const name = freshName(namesIn(system), kind.toLowerCase());
  switch (kind) {
    case "Line":
      return { part: "line", name, length: 1, bore, roughness: 1e-5, surface: "rubber hose" };
    case "Elbow":
      return {
        part: "fitting",
        name,
        bore,
        count: 1,
        kind: "elbow 90",
        loss: { by: "two-K", row: "elbow 90 screwed" },
      };
    case "Filter":
      return {
        part: "filter",
        name,
        medium: {
          by: "flow test",
          points: [{ drop: 2000, flow: 200 * LITRE_AN_HOUR }],
          dynamicViscosity: 2.49e-3,
          density: 830,
        },
        blocked: false,
        reversed: false,
      };
    case "Rise":
      return { part: "rise", name, height: 0.3 };
    case "Check valve":
      return { part: "valve", name, kv: 1000 * LITRE_AN_HOUR, opening: 1000, oneWay: true };
    case "Strainer":
      return { part: "strainer", name, aperture: 425e-6, wire: 280e-6, area: 12e-4 };
    case "Orifice":
      return { part: "orifice", name, diameter: bore / 2, dischargeCoefficient: 0.6 };
  }
}

function boreNear(system: System): number {
  const [first] = partsIn(system).flatMap((part) =>
    part.part === "line" || part.part === "fitting" ? [part.bore] : [],
  );
  return first ?? 0.01;
}
