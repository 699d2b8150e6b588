import { otherQuestions } from "./otherQuestions.js";

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
  {
    name: "draws",
    value: "N",
    help: "how often what is uncertain is drawn, 0 to 1000000; 400 when left out, and 0 is not at all",
  },
  { name: "seed", value: "N", help: "another whole number draws otherwise; 1 when left out" },
  { name: "workers", value: "N", help: "threads that draw, 1 to 64; as many as there are processors when left out" },
  { name: "at", value: '"prefilter A"', repeatable: true, help: "which filter; may be repeated" },
  {
    name: "with",
    value: "ELEMENT",
    help: "the other element: its name in the catalogue, or a file that holds it alone",
  },
  { name: "from", value: "CATALOGUE", help: "the catalogue of elements, a table (CSV) or YAML" },
  {
    name: "fitted",
    value: "ELEMENT",
    help: "what the catalogue calls the element fitted now; found by its figures when left out",
  },
  { name: "code", value: "15/13/10", help: "cleanliness the injection pump asks for, instead of the file's" },
  { name: "rating", value: '"beta 75 at 10 um"', help: "a fineness the manual asks some element on the way for" },
  { name: "interval", value: '"250 h"', help: "wanted running time between changes, instead of the manual's" },
  { name: "labour", value: "AMOUNT", help: "what an hour of work costs, in the catalogue's currency" },
  { name: "stoppage", value: "AMOUNT", help: "what one stoppage costs, in the catalogue's currency" },
  { name: "cost", value: '"wider bore=120"', repeatable: true, help: "what a kind of change costs; may be repeated" },
  { name: "side", value: "suction|delivery", help: "side of the pump to size; the one with filters when left out" },
  { name: "parallel", value: "N", help: "most elements side by side, 1 to 8; 4 when left out" },
  { name: "stages", value: "N", help: "most stages one after another, 1 to 3; 2 when left out" },
  {
    name: "bore",
    value: '"19 mm"',
    repeatable: true,
    help: "bore to try for the lines there; may be repeated; the file's own when left out",
  },
  { name: "rows", value: "N", help: "how many arrangements to show, 1 to 1000; 10 when left out" },
  {
    name: "prefill",
    value: "manual-allows",
    help: "the manual allows elements to be filled before they are fitted; taken as forbidden when left out",
  },
  { name: "primer", value: '"12 mL"', help: "what a stroke of the hand primer sweeps, instead of the file's" },
  { name: "html", help: "the card as a page to print, a single HTML file" },
  { name: "on", value: "2026-11-25", help: "another day than today" },
  { name: "within", value: '"90 days"', help: "how far to look ahead; 90 days when left out" },
  {
    name: "log",
    value: "ENTRY",
    repeatable: true,
    help: "puts an entry into the log: machine, day, then readings with their units and what was changed; may be repeated",
  },
  { name: "ics", value: "FILE", help: "writes what falls due as a calendar too" },
  {
    name: "of",
    value: "QUESTION",
    help: `figures of that question (${otherQuestions.join(", ")}), which takes its own options too`,
  },
  { name: "depth", value: "N", help: "how many steps down a working goes, 1 to 100; 1 when left out, all with --json" },
  { name: "markdown", help: "the working as Markdown, its formulas for a typesetter" },
  {
    name: "reading",
    value: '"11450 h, 14 kPa"',
    repeatable: true,
    help: "a reading instead of a file of them, with load and temperature too; may be repeated, in order of time",
  },
  {
    name: "gauge-error",
    value: '"1 kPa"',
    help: "how far the gauge may be off; common practice and the readings' own scatter when left out",
  },
  { name: "units", value: "metric|us", help: "units to show; metric when left out" },
  { name: "csv", help: "as comma-separated values, in the units shown" },
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
