import type { SystemPump } from "../system/Pump.js";
import { also, type Report } from "./also.js";
import { block } from "./block.js";
import { ofKind } from "./kinds.js";
import { choice, measured, viscous } from "./leaves/index.js";
import { list } from "./list.js";
import { isScalar, shorthand } from "./shorthand.js";
import { checkTestFluid, dynamicViscosityOf } from "./testFluid.js";
import { z } from "./zod.js";

const none = block("a system without a pump", "none", { kind: z.literal("none") });

const slip = also(
  block("a pump's slip", "{ flow: 20 L/h, rise: 80 kPa, viscosity: 2.5 mPa s }", {
    flow: measured("flowOrNone"),
    rise: measured("pressure"),
    viscosity: viscous(),
    density: measured("density").optional(),
  }),
  checkTestFluid,
);

const fixed = also(
  block("a fixed pump", "{ kind: fixed, flow: 500 L/h, relief: 80 kPa, relief to: inlet }", {
    kind: z.literal("fixed"),
    flow: measured("flow"),
    slip: slip.optional(),
    relief: measured("pressure", "a relief pressure"),
    "relief to": choice("a place for relief", ["inlet", "tank"]),
  }),
  (data, report) => {
    if ((data.slip?.flow ?? 0) >= (data.flow ?? Number.NaN)) {
      report(["slip", "flow"], "slip over flow", "slips as much as the pump moves; check the two flows");
    }
  },
);

const curve = block("a pump by its curve", "{ kind: curve, points: [{ flow: 0 L/h, rise: 60 kPa }, …] }", {
  kind: z.literal("curve"),
  points: also(
    list(
      "a pump curve",
      "[{ flow: 0 L/h, rise: 60 kPa }, { flow: 300 L/h, rise: 0 kPa }]",
      block("a point of a pump curve", "{ flow: 300 L/h, rise: 40 kPa }", {
        flow: measured("flowOrNone"),
        rise: measured("opening"),
      }),
      { least: 2, most: 50, of: "point" },
    ),
    checkCurve,
  ),
});

const pulse = block("a pulse pump", "{ kind: pulse, flow: 40 L/h, suction: 15 kPa }", {
  kind: z.literal("pulse"),
  flow: measured("flow"),
  suction: measured("vacuum"),
});

type CurveData = readonly ({ readonly flow: number; readonly rise: number } | undefined)[];

function checkCurve(points: Partial<CurveData>, report: Report): void {
  points.forEach?.((point, at) => {
    const before = points[at - 1];
    if (typeof point !== "object" || typeof before !== "object") return;
    if (point.flow <= before.flow) {
      report([at, "flow"], "not in order", "not more than the point before; write the points by rising flow");
    }
    if (point.rise > before.rise) {
      report([at, "rise"], "curve rises", "more than the point before; a pump's rise falls as its flow grows");
    }
  });
}

/** A lift pump, or none, as a file has it. */
export const pumpBlock = shorthand(
  ofKind("a pump", "{ kind: fixed, flow: 500 L/h, relief: 80 kPa, relief to: inlet }", [none, fixed, curve, pulse], {
    gear: "fixed",
    gerotor: "fixed",
    vane: "fixed",
    plunger: "fixed",
    piston: "fixed",
    centrifugal: "curve",
    gravity: "none",
  }),
  (value) => (isScalar(value) ? { kind: value } : value),
  { const: "none", description: "no pump: the tank stands above, and every part stands under suction" },
);

/** A lift pump in SI. */
export function toPump(data: z.output<typeof pumpBlock>): SystemPump {
  switch (data.kind) {
    case "none":
      return { kind: "none" };
    case "fixed": {
      const { flow, relief } = data;
      const slipped = data.slip && {
        flow: data.slip.flow,
        rise: data.slip.rise,
        dynamicViscosity: dynamicViscosityOf(data.slip),
      };
      return { kind: "fixed", flow, relief, reliefTo: data["relief to"], ...(slipped ? { slip: slipped } : {}) };
    }
    case "curve":
      return { kind: "curve", points: data.points.map(({ flow, rise }) => ({ flow, rise })) };
    case "pulse":
      return { kind: "pulse", flow: data.flow, suction: data.suction };
  }
}
