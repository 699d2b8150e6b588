import { cleaned, cleanedCircuit, filter, line, parallel, series, tank } from "@thirstline/core";
import { expect, test } from "vitest";

const hose = line({ length: 3, bore: 0.012, roughness: 1e-6 });
const element = (restriction: number) => filter({ clean: { drop: 1, flow: 1, dynamicViscosity: 1 }, restriction });

test("cleaned(supply) cleans the elements of every tank's path, suction and delivery, plugged ones too", () => {
  const soiled = {
    ambientPressure: 101325,
    tanks: [tank({ depth: 0, path: series(hose, element(2)) }), tank({ depth: 0, path: hose })],
    suction: parallel(element(3), series(hose, element(Infinity))),
    pump: { kind: "none" },
    delivery: element(4),
  } as const;
  expect(cleaned(soiled)).toEqual({
    ...soiled,
    tanks: [tank({ depth: 0, path: series(hose, element(1)) }), tank({ depth: 0, path: hose })],
    suction: parallel(element(1), series(hose, element(1))),
    delivery: element(1),
  });
});

test("cleanedCircuit(circuit) leaves an element that is shut off shut, and the circuit it was given as it was", () => {
  const shut = filter({ clean: { drop: 1, flow: 1, dynamicViscosity: 1 }, restriction: 5, blocked: true });
  expect(cleanedCircuit(shut)).toEqual({ ...shut, restriction: 1 });
  expect(shut.restriction).toBe(5);
});
