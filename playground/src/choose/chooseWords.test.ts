import type { CatalogueElement } from "@thirstline/spec/system";
import type { SizeAnswer } from "@thirstline/study";
import { expect, test } from "vitest";
import { finenessOf, soughtOf } from "./elementWords.js";
import { keyOf } from "./keyOf.js";
import { sizeCsv } from "./sizeCsv.js";
import { unbroken } from "./unbroken.js";

const element: CatalogueElement = {
  name: "element P10",
  filter: {
    part: "filter",
    name: "element P10",
    style: "spin-on",
    thread: "M24x1.5",
    medium: { by: "rating", size: 1e-5, kind: "nominal", area: 1, thickness: 6e-4 },
    betas: [
      { size: 4e-6, beta: 4 },
      { size: 1e-5, beta: 75 },
    ],
    blocked: false,
    reversed: false,
  },
  spreads: [],
};

test("finenessOf(element) is its last beta, else its rating, else nothing", () => {
  expect(finenessOf(element)).toBe("beta 75 at 10 µm");
  const { betas: _, ...bare } = element.filter;
  expect(finenessOf({ ...element, filter: bare })).toBe("10 µm nominal");
  const medium = { by: "air test", flow: 1, sampleArea: 1, pressure: 200, area: 1 } as const;
  expect(finenessOf({ ...element, filter: { ...bare, medium } })).toBe("");
});

test("soughtOf(element) holds name, style, thread and every beta, with either way to write a micron", () => {
  for (const word of ["p10", "spin-on", "m24x1.5", "beta 4 at 4 µm", "10 µm um"]) {
    expect(soughtOf(element)).toContain(word);
  }
});

test("unbroken(words) keeps units beside their figures, and other words apart", () => {
  const live = { figure: "in hand", text: "12 % in hand" };
  expect(unbroken([live, " at -10 °C, 3 months on"])).toEqual([live, " at -10\u00a0°C, 3 months on"]);
});

test("sizeCsv(answer, figures) has a row for each arrangement, SI, quoted where it must be and no formula", () => {
  const one = {
    stages: [
      { element: '=EVIL("x")', count: 1 },
      { element: "B", count: 2 },
    ],
    bore: 0.019,
    elements: 3,
    changesAYear: 30,
    yearlyCost: null,
    vacuum: 12_345,
    code: "15/13/10",
    pareto: true,
  };
  const figures = new Map([[keyOf(one), { inHand: 0.25, life: null }]]);
  const [head, row, last] = sizeCsv({ arrangements: [one] } as unknown as SizeAnswer, figures).split("\n");
  expect(head?.split(",")).toHaveLength(12);
  expect(row).toBe(`"'=EVIL(""x""), then 2 x B",0.019,,,12345,3,30,15/13/10,0.25,,,yes`);
  expect(last).toBe("");
});
