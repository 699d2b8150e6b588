import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { formatFault } from "../read/formatFault.js";
import type { CatalogueElement } from "./CatalogueElement.js";
import { catalogueBounds } from "./catalogueBounds.js";
import { readCatalogue } from "./readCatalogue.js";

const demo = new URL("../../demo/", import.meta.url);
const read = (text: string | Uint8Array, file = "c.csv") => readCatalogue(text, { file });

function elementsOf(text: string | Uint8Array, file?: string): readonly CatalogueElement[] {
  const found = read(text, file);
  if ("faults" in found) throw new Error(found.faults.map(formatFault).join("\n"));
  return found.elements;
}

function faultsOf(text: string | Uint8Array, file?: string): string[] {
  const found = read(text, file);
  return "faults" in found ? found.faults.map((fault) => formatFault(fault)) : [];
}

const HEAD = "name,drop,flow,viscosity,density";
const ROW = "2 kPa,200 L/h,3 mm2/s,830 kg/m3";

describe("readCatalogue(a table)", () => {
  test("reads the demonstration catalogue, each element by a name of its own", () => {
    const elements = elementsOf(readFileSync(new URL("elements.csv", demo)), "elements.csv");
    expect(elements).toHaveLength(30);
    expect(new Set(elements.map(({ name }) => name)).size).toBe(30);
  });

  test("puts an element in SI, with what buying and fitting it takes", () => {
    const text = `${HEAD},thread,flow direction,soil,rise,most flow,volume,price,labour,beta at 4 um,beta at 10 um
P10,${ROW},M24x1.5,outside in,40 g,35 kPa,300 L/h,0.9 L,33,15 min,4,>1000`;
    const [element] = elementsOf(text);
    const test = { flow: 200e-3 / 3600, dynamicViscosity: 3e-6 * 830, density: 830 };
    expect(element).toMatchObject({
      name: "P10",
      mostFlow: 300e-3 / 3600,
      volume: 0.9e-3,
      price: 33,
      labour: 900,
      spreads: [],
      filter: {
        thread: "M24x1.5",
        direction: "outside in",
        medium: { by: "flow test", points: [{ drop: 2000, flow: expect.closeTo(test.flow, 18) }] },
        capacityTest: { soil: 0.04, rise: 35e3, density: 830 },
        betas: [
          { size: 4e-6, beta: 4 },
          { size: 1e-5, beta: 1000 },
        ],
      },
    });
    // What a capacity test leaves out is as in the flow test.
    expect(element?.filter.capacityTest?.flow).toBeCloseTo(test.flow, 18);
    expect(element?.filter.capacityTest?.dynamicViscosity).toBeCloseTo(test.dynamicViscosity, 15);
  });

  test("takes a unit from the head where a cell is a number alone, and the cell's own where it has one", () => {
    const [one, other] = elementsOf("name,drop (kPa),flow [L/h],viscosity (mPa s)\nA,2,200,2.5\nB,20 mbar,200,2.5");
    expect(one?.filter.medium).toEqual(other?.filter.medium);
  });

  test.each([
    ["soil (g)", "40 ± 25 %"],
    ["soil", "40 g ± 25 %"],
    ["soil (g)", "40 ± 10"],
    ["soil", "30 g to 50 g"],
  ])("keeps a spread of %s: %s", (head, cell) => {
    const [element] = elementsOf(`${HEAD},${head},rise\nA,${ROW},${cell},35 kPa`);
    const [spread, ...more] = element?.spreads ?? [];
    expect(more).toEqual([]);
    expect(spread).toEqual({
      path: ["capacityTest", "soil"],
      low: expect.closeTo(0.03, 12),
      high: expect.closeTo(0.05, 12),
    });
  });

  test("tells every fault at once, by line, column and head", () => {
    const text = `name,drop,flow,viscosity,density,beta at 10 um,soil,rise
A,2,200 L/h,3 cSt,830 kg/m3,x,4 g,20 kPa
B,2 kPa,200 L/h,2.5 mPa s,,0.5,,
C,2 kPa,200 L/h,3 cSt,,2,4 g,
A2,2 kPa,200 L/h,2.5 mPa s,,1,,,4
,2 kPa,200 L/h,2.5 mPa s,,1,,
D,,,,,,,
E,${ROW},75,,
E,${ROW},75,,`;
    expect(faultsOf(text, "bad.csv")).toEqual([
      'bad.csv:2 drop: "2" has no unit; write it as "2 kPa"',
      'bad.csv:2 beta at 10 um: "x" is not a beta ratio; write a beta ratio, 1 to 1000000, such as 75',
      'bad.csv:3 beta at 10 um: "0.5" is no beta ratio: fewer particles came in than went out; write a beta ratio, 1 to 1000000, such as 75',
      'bad.csv:4 density: missing; with a kinematic viscosity write the density too, such as "830 kg/m3", or the dynamic viscosity, such as "2.5 mPa s"',
      'bad.csv:4 rise: missing; write a pressure such as "80 kPa"',
      "bad.csv:5: a cell more than there are columns (8); put a cell that holds a separator in quotes",
      "bad.csv:6 name: missing; write a name such as element P10",
      "bad.csv:7: nothing says what this filter lets through; write one of flow test, medium, air test, rating, fibre",
      'bad.csv:9 name: "E" is the name of an element above already; give this one its own',
    ]);
    const found = read(text, "bad.csv");
    expect("faults" in found && found.faults.slice(0, 2).map(({ column }) => column)).toEqual([3, 29]);
  });

  test.each([
    ["name,drop,flow,viscosty", 'c.csv:1: "viscosty" is not a column of a catalogue; write "viscosity"'],
    ["name,drop,drop", 'c.csv:1: "drop" is a column already; keep one of the two'],
    ["drop,flow,viscosity", 'c.csv:1: no column "name"; the first row names the columns, such as name,style,thread,'],
    ["name,beta at 10", 'c.csv:1: "10" has no unit; write it as "10 um"'],
    ["name,cost", 'c.csv:1: "cost" is not a column of a catalogue; write "price"'],
    ["name,,drop", 'c.csv:1: a column without a name; name it, such as "drop"'],
  ])("refuses the head %s", (head, message) => {
    expect(faultsOf(`${head}\nA,2 kPa,200 L/h,2.5 mPa s`)[0]).toContain(message);
  });

  test("takes quotes, doubled quotes, line ends in cells, CRLF, semicolons, tabs, a byte order mark and comments", () => {
    const quoted = elementsOf(
      '\ufeff# ours\r\nname;drop;flow;viscosity\r\n"A ""x"";\n2";2 kPa;200 L/h;2.5 mPa s\r\n\r\nB\t;2 kPa;200 L/h;2.5 mPa s',
    );
    expect(quoted.map(({ name }) => name)).toEqual(['A "x";\n2', "B"]);
    expect(elementsOf("name\tdrop\tflow\tviscosity\nA\t2 kPa\t200 L/h\t2.5 mPa s")).toHaveLength(1);
  });

  test.each([
    ['A,"2 kPa,1 L/h,2.5 mPa s', "c.csv:2: the quotation mark that opens here is never closed"],
    ['A,"2 kPa" x,1 L/h,2.5 mPa s', "c.csv:2: text after a closing quotation mark; put the whole cell in quotes"],
    ['A,2 "kPa,1 L/h,2.5 mPa s', "c.csv:2: a quotation mark in the middle of a cell"],
  ])("refuses the broken row %s", (row, message) => {
    expect(faultsOf(`name,drop,flow,viscosity\n${row}`)[0]).toContain(message);
  });

  test("tells a hundred faults and that more follow", () => {
    const rows = Array.from({ length: 500 }, (_, at) => `E${at},2,200 L/h,3 mm2/s,830 kg/m3`);
    const faults = faultsOf([HEAD, ...rows].join("\n"));
    expect(faults).toHaveLength(101);
    expect(faults.at(-1)).toBe("c.csv:102: more faults follow; put right the ones above first");
  });

  test("bounds rows, columns and bytes", () => {
    const rows = Array.from({ length: catalogueBounds.rows + 1 }, (_, at) => `E${at}`);
    expect(faultsOf(["name", ...rows].join("\n"))).toEqual([
      `c.csv:${catalogueBounds.rows + 2}: more than 20000 elements; split the catalogue`,
    ]);
    expect(faultsOf(`${"x,".repeat(200)}\nA`)[0]).toContain("more than 100 columns");
    expect(faultsOf("x".repeat(catalogueBounds.bytes + 1))[0]).toContain("more than 8 MB");
  });

  test("names the line of bytes that are no UTF-8, also far down", () => {
    const text = new TextEncoder().encode(`name\n${"a\n".repeat(30_000)}`);
    text[40_000] = 0xff;
    const line = new TextDecoder().decode(text.subarray(0, 40_000)).split("\n").length;
    expect(faultsOf(text)).toEqual([`c.csv:${line}: this line is not UTF-8 text; save the file as UTF-8`]);
  });

  test.each([
    ["", "nothing in the file"],
    ["# only\n", "nothing in the file"],
    ["name", "no element under the heads"],
  ])("says so of %j", (text, message) => {
    expect(faultsOf(text)[0]).toContain(message);
  });
});

describe("readCatalogue(YAML)", () => {
  test.each(readdirSync(new URL("elements/", demo)))("reads the single element of %s as the table has it", (file) => {
    const [alone, ...more] = elementsOf(readFileSync(new URL(`elements/${file}`, demo)), file);
    const table = elementsOf(readFileSync(new URL("elements.csv", demo)), "elements.csv");
    expect(more).toEqual([]);
    expect(alone).toEqual(table.find(({ name }) => name === alone?.name));
  });

  test("tells every fault with its path, and knows YAML by its first key as well", () => {
    const text = `format: thirstline-elements/1
elements:
  - name: A
    flow test: [{ drop: 2, flow: 200 L/h, viscosity: 2.5 mPa s }]
    threads: M20
  - { name: B, blocked: true, flow test: [{ drop: 2 kPa, flow: 200 L/h, viscosity: 2.5 mPa s }] }
foo: 1`;
    expect(faultsOf(text, "stdin")).toEqual([
      'stdin:4 elements[0].flow test[0].drop: "2" has no unit; write it as "2 kPa"',
      'stdin:5 elements[0]: "threads" is not a key of an element; write "thread"',
      expect.stringContaining('stdin:6 elements[1]: "blocked" is not a key of an element; known are'),
      'stdin:7: "foo" is not a key of a catalogue; known are format, elements',
    ]);
  });

  test.each([
    ["", "nothing in the file; a catalogue begins with format: thirstline-elements/1"],
    ["format: thirstline/1\nelements: [{ name: A }]", '"thirstline/1" is not a format known here'],
    ["format: thirstline-elements/1", "missing; write a list of elements"],
    ["- a", "not a catalogue; begin with format: thirstline-elements/1"],
    [`elements: ${" ".repeat(40_000)}`, "a catalogue in YAML has at most 32768: write a larger one as a table (CSV)"],
  ])("refuses text %#", (text, message) => {
    expect(faultsOf(text, "c.yaml").join()).toContain(message);
  });
});
