import type { SystemPump } from "@thirstline/spec/system";
import type { Pen } from "./Pen.js";
import type { Written } from "./yaml.js";

/** The pump as it stands in a file. */
export function writePump(pump: SystemPump, pen: Pen): Written {
  switch (pump.kind) {
    case "none":
      return "none";
    case "fixed": {
      const slip = pen.in("slip");
      const viscosity = "dynamicViscosity";
      return {
        kind: pump.kind,
        flow: pen.write(pump.flow, { key: "flow", unit: "flow", kind: "flow" }),
        slip: pump.slip && {
          flow: slip.write(pump.slip.flow, { key: "flow", unit: "flow", kind: "flowOrNone" }),
          rise: slip.write(pump.slip.rise, { key: "rise", unit: "pressure", kind: "pressure" }),
          viscosity: slip.write(pump.slip.dynamicViscosity, { key: viscosity, unit: viscosity, kind: viscosity }),
        },
        relief: pen.write(pump.relief, { key: "relief", unit: "pressure", kind: "pressure" }),
        "relief to": pump.reliefTo,
      };
    }
    case "curve":
      return {
        kind: pump.kind,
        points: pump.points.map(({ flow, rise }, at) => ({
          flow: pen.in("points", at).write(flow, { key: "flow", unit: "flow", kind: "flowOrNone" }),
          rise: pen.in("points", at).write(rise, { key: "rise", unit: "pressure", kind: "opening" }),
        })),
      };
    case "pulse":
      return {
        kind: pump.kind,
        flow: pen.write(pump.flow, { key: "flow", unit: "flow", kind: "flow" }),
        suction: pen.write(pump.suction, { key: "suction", unit: "pressure", kind: "vacuum" }),
      };
  }
}
