import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { z } from "zod";
import { systemSchema } from "./systemSchema.js";

const schemaFile = new URL("../../schema/system.schema.json", import.meta.url);

test("schema/system.schema.json is what systemSchema() makes; `npm run schema -w packages/spec` writes it anew", () => {
  expect(JSON.parse(readFileSync(schemaFile, "utf8"))).toEqual(JSON.parse(JSON.stringify(systemSchema())));
});

/** zod reads a bare list of required keys as a type of its own, so those are left out; all else is checked. */
function withoutBareRequired(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutBareRequired);
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).filter(
    ([key, inner]) => !(key === "oneOf" && (inner as object[]).every((one) => Object.keys(one).join() === "required")),
  );
  return Object.fromEntries(entries.map(([key, inner]) => [key, withoutBareRequired(inner)]));
}

const validator = z.fromJSONSchema(withoutBareRequired(systemSchema()) as never);

function demo(name: string): Record<string, unknown> {
  return parse(readFileSync(new URL(`../../demo/${name}.yaml`, import.meta.url), "utf8"), { merge: true });
}

const demos = readdirSync(new URL("../../demo/", import.meta.url))
  .filter((name) => name.endsWith(".yaml"))
  .map((name) => name.replace(/\.yaml$/, ""));

test.each(demos)("the schema takes the demonstration file %s", (name) => {
  expect(validator.safeParse(demo(name)).error?.issues).toBeUndefined();
});

test.each([
  ["a bare number for a quantity", { place: { altitude: 350 } }],
  ["an unknown key", { colour: "red" }],
  ["a part of two kinds", { suction: [{ line: { length: "1 m", bore: "9 mm", surface: "steel" }, rise: "1 m" }] }],
  ["a share in words", { duty: { "hours a day": 9, "days a year": 9, loads: [{ load: "all", share: "100 %" }] } }],
  ["counts of another size", { "delivered fuel": { counts: { "5 um": 20 } } }],
  ["another version", { format: "thirstline/2" }],
  ["an unknown surface", { suction: [{ line: { length: "1 m", bore: "9 mm", surface: "wood" } }] }],
])("the schema refuses %s", (_what, change) => {
  expect(validator.safeParse({ ...demo("heron"), ...change }).success).toBe(false);
});

test("the schema knows short and long forms alike", () => {
  const part = { filter: { name: "A", "flow test": [{ drop: "2 kPa", flow: "200 L/h", viscosity: "2.5 mPa s" }] } };
  const test = { soil: "40 g ± 20 %", rise: "35 kPa", flow: "200 L/h", viscosity: "2.5 mPa s" };
  const tested = { filter: { ...part.filter, name: "B", "capacity test": [test, { ...test, soil: "20 g" }] } };
  const plain = { filter: { ...part.filter, name: "C", "capacity test": test, leak: "1 % to 3 %" } };
  const bank = [part, [part], tested, plain];
  const change = { suction: [{ rise: { height: "1 m" } }, { bank }], pump: { kind: "none" } };
  expect(validator.safeParse({ ...demo("heron"), ...change }).error?.issues).toBeUndefined();
});
