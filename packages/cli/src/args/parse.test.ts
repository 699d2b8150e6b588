import { expect, test } from "vitest";
import { parse } from "./parse.js";

const faultsOf = async (line: string) =>
  (await parse(line.split(" "))).faults.map(({ at, message }) => `${at} ${message}`);

test.each([
  ["size a.yaml --catalogue b.csv", "--catalogue is not an option; see thirstline size --help"],
  ["check a.yaml --temprature 5", "--temprature is not an option; did you mean --temperature?"],
  ["--catalogue", "--catalogue is not an option; see thirstline --help"],
])("parse(%j) says of an option that there is not where those are that there are", async (line, fault) => {
  expect(await faultsOf(line)).toContain(fault);
});

test("parse tells every fault of a line at once, options in the order they were typed", async () => {
  expect(await faultsOf("chek a.yaml --catalogue b.csv --json=5 --seed")).toEqual([
    "--catalogue is not an option; see thirstline --help",
    "--json takes no value",
    "--seed needs a value: --seed N",
    '"chek" is not a command; did you mean check?',
  ]);
});
