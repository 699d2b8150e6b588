import { quantity } from "@thirstline/study";
import { workingOf } from "@thirstline/study/working";
import { expect, test } from "vitest";
import { demo } from "../file/demos.test-support.js";
import { mapPoints } from "./mapPoints.js";
import { mapReadings } from "./mapReadings.js";

test.each(["heron-finer.yaml", "crane-narrow-hose.yaml", "generator-soiled.yaml", "dewatering-paper.yaml"])(
  "mapReadings(point, units, shown) of %s names workings that come to what it reads",
  (file) => {
    const system = demo(file);
    for (const point of mapPoints(system, [261.15, 281.15, 309.15])) {
      const named: [figure: string, text: string][] = [];
      mapReadings(point, "metric", (text, figure) => {
        named.push([figure, text]);
        return text;
      });
      expect(named.length).toBeGreaterThan(1);
      const worked = named.map(([figure]) => {
        const step = workingOf(system, figure, { temperature: point.temperature })?.step;
        const text = step && quantity(step.value, figure === "temperature" ? "temperature" : "flow", "metric");
        return [figure, text];
      });
      expect(worked).toEqual(named);
    }
  },
);
