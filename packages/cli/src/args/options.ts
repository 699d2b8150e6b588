/** An option of the command line. */
export interface Option {
  readonly name: string;
  readonly short?: string;
  /** what stands for its value in help; left out of one that takes none */
  readonly value?: string;
  /** whether it may be given more than once */
  readonly repeatable?: boolean;
  readonly help: string;
}

/** Every option, in the order of help. */
export const options = [
  {
    name: "temperature",
    short: "t",
    value: '"-10 degC"',
    repeatable: true,
    help: "fuel temperature instead of the file's; may be repeated",
  },
  { name: "demand", value: '"300 L/h"', help: "demand, burn and return together, instead of the file's" },
  { name: "to", value: '"600 L/h"', help: "where the curve ends; a bit beyond the ceiling when left out" },
  { name: "points", value: "N", help: "how many points the curve has, 2 to 10001; 61 when left out" },
  { name: "units", value: "metric|us", help: "units to show; metric when left out" },
  { name: "csv", help: "the curve as comma-separated values, in the units shown" },
  { name: "json", help: "the answer for programs, every figure in SI" },
  { name: "help", short: "h", help: "what a command takes" },
  { name: "version", help: "which version this is" },
] as const satisfies readonly Option[];

/** Name of an option. */
export type OptionName = (typeof options)[number]["name"];

/** An option by its name. */
export function optionOf(name: OptionName): Option {
  return options.find((option) => option.name === name) as Option;
}
