// The system of this bench: the demonstration ferry on fuel so clean that its three elements last about five years.
import { readFileSync } from "node:fs";
import { readSystem } from "@thirstline/spec";

/** Five years of duty, as running years. */
export const YEARS = 5;

/** @param {{ uneven: boolean }} how whether one side of the duplex is another product, so that the flow splits anew all the way */
export function fiveYears({ uneven }) {
  const text = readFileSync(new URL("../../spec/demo/heron.yaml", import.meta.url), "utf8")
    .replace("delivered fuel: { code: 17/15/12,", "delivered fuel: { solids: 0.067 mg/L ± 40 %,")
    .replace(
      "{ <<: *pre, name: prefilter B }",
      uneven ? `{ <<: *pre, name: prefilter B, ${other} }` : "{ <<: *pre, name: prefilter B }",
    );
  const read = readSystem(text, { file: "heron.yaml" });
  if ("faults" in read) throw new Error(read.faults.map(({ message }) => message).join("; "));
  return read.system;
}

const other =
  "flow test: [{ drop: 1.5 kPa, flow: 200 L/h, viscosity: 3 mm2/s, density: 830 kg/m3 }], " +
  "capacity test: { soil: 100 g ± 20 %, rise: 35 kPa, flow: 200 L/h, viscosity: 3 mm2/s, density: 830 kg/m3 }";
