import type { z } from "zod";
import type { SystemMedium } from "../../system/Filter.js";
import { also } from "../also.js";
import { block } from "../block.js";
import { given } from "../given.js";
import { choice, measured, plain } from "../leaves/index.js";

/** A medium by its geometry, as a file has it. */
export const mediumBlock = block("a medium", "{ area: 0.5 m2, thickness: 0.6 mm, permeability: 2e-13 m2 }", {
  area: measured("area"),
  thickness: measured("thickness"),
  permeability: measured("permeability"),
  inertia: measured("inertia").optional(),
});

/** An air test of a sample of the medium, as a file has it; `area` is the sample's. */
export const airTestBlock = block("an air test", "{ flow: 10 cfm, area: 1 ft2, pressure: 0.5 inH2O }", {
  flow: measured("airFlow"),
  area: measured("area"),
  pressure: measured("pressure"),
});

const ratingKind = choice("a kind of rating", ["nominal", "absolute", "beta 75", "beta 200", "beta 1000"]);

/** What a maker says of fineness and no more, as a file has it: of a medium that is known by other figures. */
export const statedRatingBlock = also(
  block("a stated rating", "{ size: 10 um, kind: nominal }", { size: measured("size"), kind: ratingKind }),
  (data, report) => {
    // Beyond the test dusts' sizes there is no beta; `betaSize` bounds the sizes of betas likewise.
    if (data.kind === undefined || data.kind === "nominal" || !((data.size ?? 0) > 100.0001e-6)) return;
    report(["size"], "out of range", "no beta is tested above 100 um; write what its test says, or the kind nominal");
  },
);

/** A micron rating, as a file has it. */
export const ratingBlock = block("a rating", "{ size: 10 um, kind: nominal, area: 0.5 m2, thickness: 0.6 mm }", {
  size: measured("size"),
  kind: ratingKind,
  area: measured("area"),
  thickness: measured("thickness"),
});

/** A fibre mat, as a file has it. */
export const fibreBlock = block("a fibre mat", "{ diameter: 5 um, solidity: 0.1, area: 0.5 m2, thickness: 0.6 mm }", {
  diameter: measured("fibre"),
  // The range of the published laws (Davies 1952).
  solidity: plain({ words: "a solidity", least: 0.006, most: 0.3, example: 0.1 }),
  area: measured("area"),
  thickness: measured("thickness"),
});

/** A medium by its geometry in SI. */
export function toMedium({ area, thickness, permeability, inertia }: z.output<typeof mediumBlock>): SystemMedium {
  return given({ by: "medium", area, thickness, permeability, inertia });
}

/** An air test in SI, with the area of the medium in the element. */
export function toAirTest(test: z.output<typeof airTestBlock>, area: number): SystemMedium {
  return { by: "air test", flow: test.flow, sampleArea: test.area, pressure: test.pressure, area };
}

/** A rating in SI. */
export function toRating({ size, kind, area, thickness }: z.output<typeof ratingBlock>): SystemMedium {
  return { by: "rating", size, kind, area, thickness };
}

/** A fibre mat in SI. */
export function toFibre({ diameter, solidity, area, thickness }: z.output<typeof fibreBlock>): SystemMedium {
  return { by: "fibre", diameter, solidity, area, thickness };
}
