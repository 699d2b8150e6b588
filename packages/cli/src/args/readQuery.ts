import type { KindName } from "@thirstline/spec";
import type { ArgumentFault } from "./ArgumentFault.js";
import type { OptionName } from "./options.js";
import type { Query } from "./Query.js";
import type { Request } from "./Request.js";

/** Draws when nobody says how many: a chance of 10 % is then known to about 1.5 %. */
const DRAWS = 400;

/** Understands the values of a command line, or says everything that is wrong with them. */
export async function readQuery({ given }: Request): Promise<Query | { readonly faults: readonly ArgumentFault[] }> {
  const faults: ArgumentFault[] = [];
  const refuse = (name: OptionName, code: string, message: string) => {
    faults.push({ at: `--${name}`, code, message });
  };
  const quantities = async (name: OptionName, kind: KindName): Promise<number[]> => {
    const texts = given.get(name) ?? [];
    if (texts.length === 0) return [];
    // Units cost a third of a second to load; an answer with the file's own figures in JSON form may need none.
    const { quantity } = await import("@thirstline/spec");
    return texts.flatMap((text) => {
      const read = quantity(text, kind);
      if ("value" in read) return [read.value];
      refuse(name, read.fault.code, read.fault.message);
      return [];
    });
  };
  const temperatures = await quantities("temperature", "temperature");
  const [demand = null] = await quantities("demand", "flow");
  const [to = null] = await quantities("to", "flow");
  const whole = (name: OptionName, least: number, most: number): number | null => {
    const [text] = given.get(name) ?? [];
    if (text === undefined) return null;
    const number = Number(text);
    if (/^\d+$/.test(text) && number >= least && number <= most) return number;
    refuse(name, "out of range", `"${text}" is not a whole number from ${least} to ${most}`);
    return null;
  };
  const points = whole("points", 2, 10_001);
  const draws = whole("draws", 0, 1_000_000) ?? DRAWS;
  const seed = whole("seed", 0, 100_000_000) ?? 1;
  const workers = whole("workers", 1, 64);
  const [units = "metric"] = given.get("units") ?? [];
  if (units !== "metric" && units !== "us") refuse("units", "unknown units", `"${units}" is neither metric nor us`);
  if (given.has("csv") && given.has("json")) refuse("csv", "two forms", "and --json exclude each other");
  const form = given.has("json") ? "json" : given.has("csv") ? "csv" : "text";
  if (faults.length > 0) return { faults };
  return {
    temperatures: temperatures.filter((one, at) => temperatures.findIndex((other) => same(one, other)) === at),
    demand,
    to,
    points,
    draws,
    seed,
    workers,
    units: units === "us" ? "us" : "metric",
    form,
  };
}

/** Whether two temperatures, K, differ by rounding only: 59 degF is 15 degC. */
function same(one: number, other: number): boolean {
  return Math.abs(one - other) < 1e-6;
}
