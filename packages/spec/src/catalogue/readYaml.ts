import { bounds } from "../read/bounds.js";
import type { Fault } from "../read/Fault.js";
import { parse } from "../read/parse.js";
import { place, toFault } from "../read/placing.js";
import type { RawFault } from "../read/RawFault.js";
import { shown } from "../shown.js";
import type { CatalogueElement } from "./CatalogueElement.js";
import type { CatalogueResult } from "./CatalogueResult.js";
import { readElement } from "./readElement.js";
import { sameName } from "./sameName.js";

/** The one version of a catalogue in YAML that is read. */
const formatName = "thirstline-elements/1";

/** Reads a catalogue in YAML or JSON: `format`, and `elements`, a list. It is bounded as a system file is. */
export function readYaml(text: string, file: string): CatalogueResult {
  if (text.length > bounds.bytes) {
    const message = `${text.length} characters; a catalogue in YAML has at most ${bounds.bytes}: write a larger one as a table (CSV)`;
    return { faults: [{ file, line: 1, column: 1, path: "", code: "too large", received: null, message }] };
  }
  const parsed = parse(text);
  const elements: CatalogueElement[] = [];
  const found = parsed.faults.length > 0 || parsed.stopped ? [] : read(parsed.data, elements);
  const faults = [...parsed.faults, ...found]
    .map((fault) => place(fault, parsed))
    .sort((left, right) => left.offset - right.offset)
    .slice(0, bounds.faults)
    .map((one): Fault => toFault(one, parsed, file));
  if (faults.length > 0) return { faults };
  if (elements.length > 0) return { elements };
  const message = `nothing in the file; a catalogue begins with format: ${formatName}`;
  return { faults: [{ file, line: 1, column: 1, path: "", code: "empty", received: null, message }] };
}

function read(data: unknown, elements: CatalogueElement[]): RawFault[] {
  if (data === undefined || data === null) return [];
  if (typeof data !== "object" || Array.isArray(data)) {
    return [{ code: "wrong form", path: [], message: `not a catalogue; begin with format: ${formatName}` }];
  }
  const { format, elements: list, ...rest } = data as Record<string, unknown>;
  const faults: RawFault[] = Object.keys(rest).map((key) => ({
    code: "unknown key",
    path: [],
    received: key,
    message: `${shown(key)} is not a key of a catalogue; known are format, elements`,
  }));
  if (format !== formatName) {
    const said = format === undefined ? "missing" : `${shown(format)} is not a format known here`;
    faults.push({ code: "unknown format", path: ["format"], message: `${said}; write ${formatName}` });
  }
  if (!Array.isArray(list) || list.length === 0) {
    const message = 'missing; write a list of elements, each after "- ", as in - { name: element P10, … }';
    return [...faults, { code: "missing", path: ["elements"], message }];
  }
  const names = new Set<string>();
  list.forEach((one, at) => {
    const path = ["elements", at];
    const element = readElement(one);
    if ("faults" in element) {
      faults.push(...element.faults.map((fault) => ({ ...fault, path: [...path, ...fault.path] })));
    } else if (names.has(element.element.name)) {
      faults.push({ code: "same name", path: [...path, "name"], message: sameName(element.element.name) });
    } else {
      names.add(element.element.name);
      elements.push(element.element);
    }
  });
  return faults;
}
