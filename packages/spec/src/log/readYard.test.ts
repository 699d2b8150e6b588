import { expect, test } from "vitest";
import { formatFault } from "../read/formatFault.js";
import { readMachines } from "./readMachines.js";
import { readShelf } from "./readShelf.js";

const machines = (...lines: string[]) => readMachines(lines.join("\n"), { file: "machines.csv" });
const shelf = (...lines: string[]) => readShelf(lines.join("\n"), { file: "shelf.csv" });

test("readMachines(text) reads which system a machine has and what is at stake", () => {
  const head = "machine,system,stakes,changed,hours (h),distance (mile)";
  const { rows, faults } = machines(head, "Heron,heron.yaml,Stops the work,2026-03-01,11400,", "Pump,pump.yaml,,,,");
  expect(faults).toEqual([]);
  expect(rows).toEqual([
    {
      machine: "Heron",
      system: "heron.yaml",
      stakes: "stops the work",
      changed: { date: "2026-03-01", hours: 11400 * 3600 },
    },
    { machine: "Pump", system: "pump.yaml", stakes: null },
  ]);
});

test("readMachines(text) tells every fault, and keeps the good rows", () => {
  const { rows, faults } = machines(
    "machine,system,stakes,changed",
    "Heron,heron.yaml,vital,2026-13-01",
    "Heron,,,",
    ",a.yaml,,",
    "Lorry,lorry.yaml,a nuisance,",
  );
  expect(faults.map(formatFault)).toEqual([
    'machines.csv:2 stakes: "vital" is not known; write "stops the work" or "a nuisance"',
    'machines.csv:2 changed: "2026-13-01": there is no month 13; write the day of the last change such as 2026-03-01',
    'machines.csv:3 machine: "Heron" is the name of a machine above already; give this one its own',
    "machines.csv:3 system: missing; name the machine's system file",
    "machines.csv:4 machine: missing; give the machine a name",
  ]);
  expect(rows.map(({ machine }) => machine)).toEqual(["Lorry"]);
});

test("readShelf(text) reads parts, the places they fit, counts and delivery", () => {
  const { rows, faults } = shelf(
    "part,element,system,on hand,delivery (day)",
    "P25,prefilter A,heron.yaml,3,10",
    "P25,prefilter B,heron.yaml,,",
    "F4,fine filter,,0,2 weeks",
  );
  expect(faults).toEqual([]);
  expect(rows).toEqual([
    { part: "P25", element: "prefilter A", system: "heron.yaml", onHand: 3, delivery: 864_000 },
    { part: "P25", element: "prefilter B", system: "heron.yaml", onHand: null, delivery: null },
    { part: "F4", element: "fine filter", system: null, onHand: 0, delivery: 1_209_600 },
  ]);
});

test("readShelf(text) refuses a place with two parts, a part counted twice and what is no count", () => {
  const { faults } = shelf(
    "part,element,on hand",
    "P25,prefilter A,3",
    "P26,prefilter A,1",
    "P25,prefilter B,2",
    "P27,prefilter C,some",
    ",,",
  );
  expect(faults.map(formatFault)).toEqual([
    'shelf.csv:3 element: "prefilter A" of any system has a part above already; keep one of the two',
    'shelf.csv:4 on hand: how many of "P25" are on hand stands above already; leave this cell empty',
    'shelf.csv:5 on hand: "some" is not a count; write a whole number such as 2',
    "shelf.csv:6 part: missing; give the part a name",
    "shelf.csv:6 element: missing; name the element it replaces",
  ]);
});
