/** A property of a calendar file: its name, its parameters as written, and its value with nothing taken off. */
interface CalendarLine {
  readonly name: string;
  readonly parameters: readonly string[];
  readonly value: string;
}

/** A component: its name, its properties and what stands inside it. */
export interface CalendarPart {
  readonly name: string;
  readonly lines: readonly CalendarLine[];
  readonly parts: readonly CalendarPart[];
}

/**
 * Reads a calendar file by the rules of RFC 5545 (from memory): lines of at most 75 octets ended by CR LF, a longer one
 * continued after a space or a tab, components between BEGIN and END. Written apart from what makes such files.
 *
 * @throws an Error that names the line a rule is broken on
 */
export function readCalendar(bytes: Uint8Array): CalendarPart {
  const physical: number[][] = [[]];
  for (let at = 0; at < bytes.length; at++) {
    const byte = bytes[at] as number;
    if (byte === 13 && bytes[at + 1] === 10) {
      physical.push([]);
      at += 1;
    } else if (byte < 32 && byte !== 9) throw new Error(`line ${physical.length}: a control character ${byte}`);
    else physical.at(-1)?.push(byte);
  }
  if (physical.pop()?.length !== 0) throw new Error("the last line is not ended");
  const logical: number[][] = [];
  for (const [at, line] of physical.entries()) {
    if (line.length > 75) throw new Error(`line ${at + 1}: ${line.length} octets`);
    new TextDecoder("utf-8", { fatal: true }).decode(Uint8Array.from(line)); // no letter is cut in two
    if (line[0] === 32 || line[0] === 9) logical.at(-1)?.push(...line.slice(1));
    else logical.push([...line]);
  }
  const lines = logical.map((line) => lineOf(new TextDecoder().decode(Uint8Array.from(line))));
  const { part, next } = partAt(lines, 0);
  if (next !== lines.length) throw new Error("something follows the calendar's end");
  return part;
}

function lineOf(text: string): CalendarLine {
  const [, name = "", parameters = "", value] = /^([A-Z0-9-]+)((?:;[A-Z0-9-]+=[^:;,]*)*):(.*)$/s.exec(text) ?? [];
  if (value === undefined) throw new Error(`not a property: ${text}`);
  return { name, parameters: parameters.split(";").slice(1), value };
}

function partAt(lines: readonly CalendarLine[], from: number): { part: CalendarPart; next: number } {
  const { name, value } = lines[from] as CalendarLine;
  if (name !== "BEGIN") throw new Error(`${name} where BEGIN is due`);
  const own: CalendarLine[] = [];
  const parts: CalendarPart[] = [];
  for (let at = from + 1; at < lines.length; ) {
    const line = lines[at] as CalendarLine;
    if (line.name === "END") {
      if (line.value !== value) throw new Error(`END:${line.value} for ${value}`);
      return { part: { name: value, lines: own, parts }, next: at + 1 };
    }
    if (line.name === "BEGIN") {
      const inner = partAt(lines, at);
      parts.push(inner.part);
      at = inner.next;
    } else {
      own.push(line);
      at += 1;
    }
  }
  throw new Error(`${value} has no end`);
}

/** A text value with its escapes undone; an escape no rule knows is refused. */
export function calendarText(value: string): string {
  if (/(^|[^\\])(\\\\)*[;,]/.test(value)) throw new Error(`a bare ; or , in ${value}`);
  return value.replace(/\\(.)/gs, (_all, letter: string) => {
    if (letter === "n" || letter === "N") return "\n";
    if (letter === "\\" || letter === ";" || letter === ",") return letter;
    throw new Error(`\\${letter} is no escape`);
  });
}
