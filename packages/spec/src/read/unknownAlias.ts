import { shown } from "../shown.js";

/** The message for an alias of nothing; a cleanliness code that begins with * is read as one. */
export function unknownAlias(source: string): string {
  const text = `*${source}`;
  if (/[/]\d/.test(source))
    return `${text} begins with *, which YAML takes for an alias; write it in quotes: "${text}"`;
  return `${shown(text)} repeats a block marked &${source.slice(0, 20)}, and there is none above; mark it or write it out`;
}
