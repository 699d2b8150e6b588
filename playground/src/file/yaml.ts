import { Raw } from "./Raw.js";

/** What a written file is made of; undefined is left out. */
export type Written = string | number | boolean | Raw | readonly Written[] | Block;

/** Keys and what stands under them. */
export type Block = { readonly [key: string]: Written | undefined };

/** Widest line on which a block is written between braces. */
const WIDEST = 118;

/** YAML 1.2 of plain data: short blocks on one line between braces, longer ones indented. */
export function yamlOf(data: Block): string {
  return `${blockLines(data, "").join("\n")}\n`;
}

function blockLines(data: Written, indent: string): string[] {
  if (isList(data)) return data.flatMap((one) => itemLines(one, indent));
  return entriesOf(data).flatMap(([key, value]) => {
    const line = `${indent}${key}: ${flow(value)}`;
    // Paths are always written one part a line.
    if (isScalar(value) || (line.length <= WIDEST && !holdsParts(value))) return [line];
    return [`${indent}${key}:`, ...blockLines(value, `${indent}  `)];
  });
}

function itemLines(one: Written, indent: string): string[] {
  const line = `${indent}- ${flow(one)}`;
  const [only, ...more] = entriesOf(one);
  if (only !== undefined && more.length === 0 && !isScalar(only[1])) {
    const [key, value] = only;
    const single = `${indent}- ${key}: ${flow(value)}`;
    return single.length <= WIDEST ? [single] : [`${indent}- ${key}:`, ...blockLines(value, `${indent}    `)];
  }
  if (isScalar(one) || line.length <= WIDEST) return [line];
  const lines = blockLines(one, `${indent}  `);
  if (isList(one)) return [`${indent}-`, ...lines];
  return lines.map((text, at) => (at === 0 ? `${indent}- ${text.slice(indent.length + 2)}` : text));
}

function flow(value: Written): string {
  if (isList(value)) return `[${value.map(flow).join(", ")}]`;
  if (isScalar(value)) return scalar(value);
  return `{ ${entriesOf(value)
    .map(([key, one]) => `${key}: ${flow(one)}`)
    .join(", ")} }`;
}

function scalar(value: string | number | boolean | Raw): string {
  if (value instanceof Raw) return value.text;
  if (typeof value !== "string") return String(value);
  // Plain only where nothing in it can mean anything to YAML; a JSON string is a YAML string.
  const plain =
    /^[A-Za-z0-9.-][A-Za-z0-9 ./²³µ°-]*$/.test(value) &&
    !value.endsWith(" ") &&
    !/^[-+.\d][\d.eE_+-]*$|^[-.] |^-{1,3}$|^0[xob]/.test(value);
  const word = /^(true|false|null|yes|no|on|off|y|n|~)$/i.test(value);
  return plain && !word ? value : JSON.stringify(value);
}

function holdsParts(value: Written): boolean {
  return isList(value) && value.some((one) => entriesOf(one).some(([, inner]) => !isScalar(inner)));
}

function entriesOf(data: Written): [string, Written][] {
  if (isScalar(data) || isList(data)) return [];
  return Object.entries(data).filter((entry): entry is [string, Written] => entry[1] !== undefined);
}

function isScalar(value: Written): value is string | number | boolean | Raw {
  return typeof value !== "object" || value instanceof Raw;
}

function isList(value: Written): value is readonly Written[] {
  return Array.isArray(value);
}
