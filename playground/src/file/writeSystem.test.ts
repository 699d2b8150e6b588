import { quantity, readSystem, spreadQuantity } from "@thirstline/spec";
import type { System } from "@thirstline/spec/system";
import { expect, test } from "vitest";
import { carrySpreads } from "../edit/carrySpreads.js";
import { branchHere, insertPart } from "../edit/edits.js";
import { type NewPart, newPart, newParts } from "../edit/newPart.js";
import { scaledDemand } from "../model/demand.js";
import { demo, demoTexts } from "./demos.test-support.js";
import { writeSystem } from "./writeSystem.js";

const readers = { quantity, spreadQuantity };

function readBack(text: string) {
  const read = readSystem(text, { file: "written.yaml" });
  if ("faults" in read)
    throw new Error(`${read.faults.map(({ line, message }) => `${line}: ${message}`).join("\n")}\n${text}`);
  return read.system;
}

test.each([...demoTexts.keys()])("writeSystem(system, readers) of %s reads back as the very same system", (file) => {
  const system = demo(file);
  expect(readBack(writeSystem(system, readers))).toEqual(system);
});

test("writeSystem(system, readers) keeps a demand, a temperature and a name no one would type", () => {
  const odd = {
    ...scaledDemand(demo("heron.yaml"), Math.PI / 3),
    temperature: 263.1499,
    name: 'yes: "no" # {odd}, 1:2',
  };
  expect(readBack(writeSystem(odd, readers))).toEqual(odd);
});

test("writeSystem(system, readers) writes every kind of part that can be added, and a new bank", () => {
  const heron = demo("heron.yaml");
  const add = (system: System, kind: NewPart) =>
    carrySpreads(system, insertPart(system, { side: "suction", at: 1 }, newPart(kind, system)));
  const longer = newParts.reduce(add, heron);
  const wider = carrySpreads(longer, branchHere(longer, { side: "suction", at: 0 }));
  const bankNames = (text: string) => text.replaceAll(/"name":"bank[^"]*"/g, "");
  expect(bankNames(JSON.stringify(readBack(writeSystem(wider, readers))))).toBe(bankNames(JSON.stringify(wider)));
});

test("writeSystem(system, readers) writes what people use: millimetres, litres an hour, kilopascals, degrees", () => {
  const text = writeSystem(demo("heron.yaml"), readers);
  expect(text).toContain("- line: { name: tank line, length: 6 m, bore: 19 mm, surface: rubber hose }");
  expect(text).toContain("pump: { kind: fixed, flow: 500 L/h, relief: 80 kPa, relief to: inlet }");
  expect(text).toContain("temperature: 15 degC");
});
