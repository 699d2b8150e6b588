import { type formatFault, nearest, readCatalogue } from "@thirstline/spec";
import type { CatalogueElement } from "@thirstline/spec/system";
import type { ArgumentFault } from "../args/ArgumentFault.js";
import type { Choice } from "../args/Choice.js";
import type { Query } from "../args/Query.js";
import type { Request } from "../args/Request.js";
import { readChoice } from "../args/readChoice.js";
import { readQuery } from "../args/readQuery.js";
import { argumentFaults, complain } from "../io/complain.js";
import type { Io } from "../io/Io.js";
import type { Output } from "../io/Output.js";
import { readInputs } from "../io/readInput.js";

/** What a choosing command was asked, with its elements at hand. */
export interface Choosing {
  readonly query: Query;
  readonly choice: Choice;
  /** of the catalogue named with --from; empty without one */
  readonly catalogue: readonly CatalogueElement[];
  /** the element named with --with */
  readonly other: CatalogueElement | null;
  /** the element named with --fitted */
  readonly fitted: CatalogueElement | null;
}

/** Options a command cannot do without. */
export type Needed = "at" | "with" | "from";

/** Understands the options and reads the catalogue; tells all faults. Null when there is one. */
export async function choosing(
  request: Request,
  needed: readonly Needed[],
  io: Io,
  out: Output,
  err: Output,
): Promise<Choosing | null> {
  const json = request.given.has("json");
  const query = await readQuery(request);
  const choice = readChoice(request);
  const faults = [
    ...("faults" in query ? query.faults : []),
    ...("faults" in choice ? choice.faults : []),
    ...needed.filter((name) => !request.given.has(name)).map(missing),
  ];
  if ("faults" in query || "faults" in choice || faults.length > 0) {
    await complain(argumentFaults(faults), json, out, err);
    return null;
  }
  const elements = new Elements(io);
  const catalogue = choice.from === null ? [] : await elements.all(choice.from);
  const other = choice.with === null ? null : await elements.one("with", choice.with, choice.from, catalogue);
  const fitted = choice.fitted === null ? null : await elements.one("fitted", choice.fitted, choice.from, catalogue);
  const told = [...argumentFaults(elements.faults), ...elements.fileFaults];
  if (told.length === 0) return { query, choice, catalogue, other, fitted };
  await complain(told, json, out, err);
  return null;
}

function missing(name: Needed): ArgumentFault {
  const such = {
    at: 'which filter: --at "prefilter A"',
    with: 'the other element: --with "element P10"',
    from: "a catalogue of elements: --from elements.csv",
  };
  return { at: `--${name}`, code: "missing option", message: `is missing; name ${such[name]}` };
}

/** Reads elements from files, and gathers what is wrong. */
class Elements {
  readonly faults: ArgumentFault[] = [];
  readonly fileFaults: Parameters<typeof formatFault>[0][] = [];
  private readonly io: Io;

  constructor(io: Io) {
    this.io = io;
  }

  async all(file: string): Promise<readonly CatalogueElement[]> {
    const [input] = await readInputs([file], this.io);
    if (!input) return [];
    if ("fault" in input) {
      this.fileFaults.push(input.fault);
      return [];
    }
    const read = readCatalogue(input.bytes, { file: input.file });
    if ("elements" in read) return read.elements;
    this.fileFaults.push(...read.faults);
    return [];
  }

  /** An element by its name in the catalogue, or alone in a file of its own. */
  async one(
    option: "with" | "fitted",
    name: string,
    from: string | null,
    catalogue: readonly CatalogueElement[],
  ): Promise<CatalogueElement | null> {
    const found = catalogue.find((element) => element.name === name);
    if (found) return found;
    if (/\.(ya?ml|json|csv)$/i.test(name)) return this.alone(option, name);
    const at = `--${option}`;
    if (from === null) {
      const message = `"${name}" is no file; name the catalogue it is in: --from elements.csv`;
      this.faults.push({ at, code: "no catalogue", message });
    } else if (catalogue.length > 0) {
      const near = nearest(
        name,
        catalogue.map((element) => element.name),
      );
      const hint = near === undefined ? "" : `; did you mean "${near}"?`;
      this.faults.push({ at, code: "unknown element", message: `"${name}" is not in ${from}${hint}` });
    }
    return null;
  }

  private async alone(option: string, file: string): Promise<CatalogueElement | null> {
    const elements = await this.all(file);
    const [first, ...more] = elements;
    if (first && more.length === 0) return first;
    if (first) {
      const message = `${file} holds ${elements.length} elements; name one of them and the file with --from ${file}`;
      this.faults.push({ at: `--${option}`, code: "several elements", message });
    }
    return null;
  }
}
