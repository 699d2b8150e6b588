// Every platform has it; the libraries this package is compiled with do not say so.
declare const TextEncoder: new () => { encode(text: string): Uint8Array };

/**
 * A log with lines after its last, which is ended first where it is not; lines end as its own do.
 *
 * @param old bytes of the log, empty for a new one
 */
export function logWith(old: Uint8Array, lines: readonly string[]): Uint8Array<ArrayBuffer> {
  const last = old.at(-1);
  const end = old.includes(13) ? "\r\n" : "\n";
  const gap = last === undefined || last === 10 ? "" : end;
  const more = new TextEncoder().encode(`${gap}${lines.map((line) => `${line}${end}`).join("")}`);
  const whole = new Uint8Array(old.length + more.length);
  whole.set(old);
  whole.set(more, old.length);
  return whole;
}
