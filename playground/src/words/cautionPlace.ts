import type { Caution } from "@thirstline/study";

/** What a caution is about: a part by its name, or one of the things every system has. */
export type CautionPlace = { readonly part: string } | "fuel" | "tank" | "pump" | "place" | "limits";

/** Where a caution is to be shown: by what can hurt. */
export function cautionPlace(caution: Caution): CautionPlace {
  switch (caution.code) {
    case "fuel":
      return "fuel";
    case "limit assumed":
    case "clean limit used at change":
    case "delivery not judged":
      return "limits";
    case "altitude":
      return "place";
    case "return heat ignored":
    case "tank runs backwards":
    case "vent blocked":
      return "tank";
    case "no bore at the pump":
    case "freed air":
      return "pump";
    default:
      return { part: caution.part };
  }
}

/** Names of the parts that cautions are about. */
export function cautionedParts(cautions: readonly Caution[]): ReadonlySet<string> {
  const places = cautions.map(cautionPlace);
  return new Set(places.flatMap((place) => (typeof place === "object" ? [place.part] : [])));
}
