import type { Circuit, Judgement, Part, Supply } from "@thirstline/core";
import { expect, test } from "vitest";
import { ceilingsOf } from "./ceilingsOf.js";
import { isSoiled, isUnsure } from "./isUnsure.js";
import { partsOf } from "./partsOf.js";

const ceiling = (limit: string, flow: number) => ({ limit, flow });
/** An end of which all flows are so many times those of the middle. */
const endOf = (times: number, clean = true) => ({
  ceilings: [
    ceiling("vacuum clean", times),
    ceiling("vapour", 4 * times),
    ceiling("vacuum at change", 3 * times),
    ceiling("feed pressure", 3 * times),
  ],
  cleanCeilings: [
    ceiling("vacuum at change", 5 * times),
    ceiling("vacuum clean", 6 * times),
    ceiling("pump capacity", 7 * times),
  ],
  clean: clean ? ceiling("vacuum clean", 2 * times) : null,
});
const judgement = (clean = true) =>
  ({ lowEnd: endOf(1.5, clean), middle: endOf(1, clean), highEnd: endOf(0.5, clean) }) as unknown as Judgement;
const ceilings = (pump: object, clean?: boolean) => ceilingsOf({ pump } as unknown as Supply, judgement(clean));
const figure = (limit: string, flow: number) => ({
  limit,
  flow: { low: 0.5 * flow, middle: flow, high: 1.5 * flow },
});

test("ceilingsOf(supply, judgement) is the least flow of all limits but that of clean elements, the first of those alike", () => {
  expect(ceilings({ kind: "fixed", reliefTo: "inlet" })).toEqual({
    clean: figure("vacuum clean", 2),
    atChange: figure("vacuum at change", 3),
  });
});

test("ceilingsOf(supply, judgement) of clean elements without a limit of theirs is that at change", () => {
  expect(ceilings({ kind: "pulse" }, false).clean).toEqual(figure("vacuum at change", 3));
});

test("ceilingsOf(supply, judgement) is counted in demand where the pump relieves to the tank, and nowhere else", () => {
  expect(ceilings({ kind: "fixed", reliefTo: "tank" }).clean).toEqual(figure("vacuum clean", 6));
  expect(ceilings({ kind: "curve", reliefTo: "tank" }).clean).toEqual(figure("vacuum clean", 2));
});

test("partsOf(supply) is every part, tanks' paths first, and those of banks in their order", () => {
  const part = (kind: string) => ({ kind }) as unknown as Circuit;
  const series = (...items: Circuit[]) => ({ kind: "series", items }) as unknown as Circuit;
  const parallel = (...branches: Circuit[]) => ({ kind: "parallel", branches }) as unknown as Circuit;
  const supply = {
    tanks: [{ path: null }, { path: part("line") }],
    suction: series(part("fitting"), parallel(part("filter"), series(part("valve"), part("orifice")))),
    delivery: null,
  } as unknown as Supply;
  expect(partsOf(supply).map(({ kind }) => kind)).toEqual(["line", "fitting", "filter", "valve", "orifice"]);
});

test("isUnsure(part) is of what is known as a band only, and isSoiled(part) of a filter with soil", () => {
  const filter = (low: number, high: number, restriction = 1) =>
    ({ kind: "filter", restriction, medium: { linear: { low, middle: low, high } } }) as unknown as Part;
  const strainer = { kind: "strainer" } as unknown as Part;
  expect([strainer, filter(1, 1), filter(1, 2)].map(isUnsure)).toEqual([true, false, true]);
  const odd = { kind: "line", restriction: 2 } as unknown as Part;
  expect([filter(1, 1), filter(1, 1, 1.01), strainer, odd].map(isSoiled)).toEqual([false, true, false, false]);
});
