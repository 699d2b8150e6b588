import type { CaptureCaution, NoCaptureReason } from "@thirstline/core";
import type { LifeAnswer, LifeCaution } from "../life/LifeAnswer.js";
import { namesWords } from "./namesWords.js";
import { quantity } from "./quantity.js";
import type { UnitSystem } from "./units.js";

/** A caution of the elements named, one or several. */
type Text = (names: string, several: boolean) => string;

/** The cautions of a life as sentences without their full stops; what is true of several elements is said once. */
export function lifeCautions({ cautions }: Pick<LifeAnswer, "cautions">, units: UnitSystem): string[] {
  const said = new Map<string, { readonly text: Text; readonly names: string[] }>();
  for (const caution of cautions) {
    const text = textOf(caution, units);
    // The same words with another name are the same caution.
    const key = text("…", false);
    const known = said.get(key) ?? { text, names: [] };
    if ("element" in caution) known.names.push(caution.element);
    said.set(key, known);
  }
  return [...said.values()].map(({ text, names }) => {
    const once = [...new Set(names)];
    return text(namesWords(once), once.length > 1);
  });
}

function textOf(caution: LifeCaution, units: UnitSystem): Text {
  switch (caution.code) {
    case "capacity assumed":
      return (names) =>
        `how much soil ${names} can hold was not tested; handbook capacities by area stand in, good to a factor of 2 or 3`;
    case "law assumed":
      return (names) =>
        `one capacity does not tell how restriction grows on the way to it; for ${names} ${caution.law} blocking is taken, which lies between the other laws`;
    case "tests fit no law":
      return (names) =>
        `no ${caution.law} law goes through what is known of ${names} (${caution.why}); taken not to plug`;
    case "nothing to multiply":
      return (names) =>
        `the flow test of ${names} puts its whole drop down to body and inertia, none to the medium, so soil has nothing to multiply; taken not to plug. Two flows further apart would tell`;
    case "no capacity":
      return (names, several) =>
        `neither a capacity test nor an area is stated of ${names}, so ${several ? "they never plug" : "it never plugs"} in these figures`;
    case "capture unknown":
      return unknownCapture[caution.why];
    case "capture":
      return captureText(caution.caution, units);
    case "extrapolated":
      return () =>
        `${quantity(caution.share, "ratio", units)} of the mass lies beyond the counted sizes, carried on along the outer slopes; solids in mg/L would settle it`;
    case "season not judged":
      return () =>
        `${caution.season} at ${quantity(caution.temperature, "temperature", units)} is below the cloud point or outside the fuel's data: elements fill then, but no limit is judged`;
    case "judged at the worst":
      return () =>
        `limits are judged at full demand and every temperature of the duty, ${quantity(caution.coldest, "temperature", units)} the coldest, whichever season it is when they are met`;
    case "full load assumed":
      return () => "no loads are stated, so full load is taken all the time, which fills fastest";
    case "held":
      return () =>
        caution.held === "tank"
          ? "held fixed: how dirty the fuel is in the tank, whatever returns"
          : "held fixed: how dirty the fuel is delivered; what returns filtered thins the tank";
    case "dirty delivery":
      return () =>
        `the dirtier delivery of ${quantity(caution.volume, "volume", units)} is counted after ${quantity(caution.after, "running time", units)}; what it brings is caught within hours, so at once here`;
    case "starts full of soil":
      return (names, several) => `${names} ${several ? "start" : "starts"} with the soil the file states`;
    case "absorbs all":
      return (names, several) =>
        `what share of the free water ${names} ${several ? "absorb" : "absorbs"} is not stated; all of it is taken`;
  }
}

function captureText(caution: CaptureCaution, units: UnitSystem): Text {
  switch (caution.code) {
    case "betas from test dust":
      return () => "betas come from test dust; that they hold for field dirt is an assumption";
    case "one beta point":
      return (names, several) =>
        `one beta only is known of ${names}; what ${several ? "they catch" : "it catches"} of other sizes is worked out at both ends`;
    case "absolute taken as beta 75":
      return (names) => `"absolute" has no one meaning; of ${names} it is taken as beta 75 at that size`;
    case "beta moved": {
      const size = quantity(caution.size, "particle size", units);
      return (names) =>
        `beta ${caution.stated} at ${size} of ${names} would need a size to gain particles; ${caution.held.toPrecision(3)} is worked with`;
    }
  }
}

const unknownCapture: Readonly<Record<NoCaptureReason, Text>> = {
  "nominal rating": (names, several) =>
    `${names} ${several ? "have" : "has"} a nominal rating only, which rests on no agreed test and compares with nothing; taken to catch nothing`,
  "no beta stated": (names, several) =>
    `what ${names} ${several ? "catch" : "catches"} is not stated; taken to catch nothing`,
  "fitted backwards": (names, several) =>
    several
      ? `${names} are fitted against their flow arrows; what they catch is unknown, taken as nothing`
      : `${names} is fitted against its flow arrow; what it catches is unknown, taken as nothing`,
};
