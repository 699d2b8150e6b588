import type { SystemFuel } from "../system/Fuel.js";
import { also } from "./also.js";
import { block } from "./block.js";
import { given } from "./given.js";
import { ofKind } from "./kinds.js";
import { choice, share } from "./leaves/index.js";
import { checkMeasured, measuredKeys, toMeasured } from "./measuredFuel.js";
import { petrolClass } from "./petrolClass.js";
import { premixRatio } from "./premixRatio.js";
import { z } from "./zod.js";

const grades = ["summer", "winter", "arctic"] as const;
const grade = choice("a grade", grades);
const ethanol = share("ethanol by volume", "10 %").optional();

const options = [
  also(
    block("a diesel fuel", "{ kind: diesel, grade: winter, temperature: 15 degC }", {
      kind: z.literal("diesel"),
      grade,
      ...measuredKeys,
    }),
    checkMeasured,
  ),
  also(
    block("a biodiesel blend", "{ kind: biodiesel, share: 20 %, grade: winter, temperature: 15 degC }", {
      kind: z.literal("biodiesel"),
      share: share("biodiesel by volume", "20 %"),
      feedstock: choice("a feedstock", ["soy", "rapeseed"]).optional(),
      grade: grade.optional(),
      ...measuredKeys,
    }),
    (data, report) => {
      checkMeasured(data, report);
      if ((data.share ?? Number.NaN) < 1 && !("grade" in data)) {
        const message = `missing; write the grade of the diesel it is blended with: one of ${grades.join(", ")}`;
        report(["grade"], "missing", message);
      }
    },
  ),
  also(
    block("a paraffinic diesel", "{ kind: paraffinic, temperature: 15 degC }", {
      kind: z.literal("paraffinic"),
      ...measuredKeys,
    }),
    checkMeasured,
  ),
  also(
    block("a kerosene", "{ kind: kerosene, temperature: 15 degC }", { kind: z.literal("kerosene"), ...measuredKeys }),
    checkMeasured,
  ),
  also(
    block("a petrol", "{ kind: petrol, class: EN 228 A, ethanol: 10 %, temperature: 15 degC }", {
      kind: z.literal("petrol"),
      class: petrolClass(),
      ethanol,
      ...measuredKeys,
    }),
    checkMeasured,
  ),
  also(
    block("a premix", "{ kind: premix, ratio: 50:1, class: EN 228 A, temperature: 15 degC }", {
      kind: z.literal("premix"),
      ratio: premixRatio(),
      class: petrolClass(),
      ethanol,
      ...measuredKeys,
    }),
    checkMeasured,
  ),
  also(
    block(
      "a measured fuel",
      "{ kind: measured, like: diesel, viscosity: [{ at: 40 degC, is: 2.6 mm2/s }], density: 835 kg/m3, temperature: 15 degC }",
      {
        kind: z.literal("measured"),
        like: choice("a fuel it is like", ["diesel", "biodiesel", "paraffinic", "kerosene", "petrol"]),
        ...measuredKeys,
        viscosity: measuredKeys.viscosity.unwrap(),
        density: measuredKeys.density.unwrap(),
      },
    ),
    checkMeasured,
  ),
] as const;

/** The fuel and its temperature, as a file has them. */
export const fuelBlock = ofKind("a fuel", "{ kind: diesel, grade: winter, temperature: 15 degC }", options, {
  gasoline: "petrol",
  gas: "petrol",
  paraffin: "kerosene",
  jet: "kerosene",
  HVO: "paraffinic",
  GTL: "paraffinic",
  FAME: "biodiesel",
  "two-stroke": "premix",
});

/** The fuel in SI. */
export function toFuel(data: z.output<typeof fuelBlock>): SystemFuel {
  const measured = toMeasured(data);
  switch (data.kind) {
    case "diesel":
      return given({ kind: "diesel", grade: data.grade, measured });
    case "biodiesel": {
      const { grade: base, feedstock } = data;
      return given({ kind: "biodiesel", share: data.share, feedstock: feedstock ?? "soy", grade: base, measured });
    }
    case "paraffinic":
    case "kerosene":
      return given({ kind: data.kind, measured });
    case "petrol":
      return given({ kind: "petrol", class: data.class, ethanol: data.ethanol ?? 0, measured });
    case "premix":
      return given({ kind: "premix", ratio: data.ratio, class: data.class, ethanol: data.ethanol ?? 0, measured });
    case "measured":
      return { kind: "measured", like: data.like, measured: measured ?? {} };
  }
}
