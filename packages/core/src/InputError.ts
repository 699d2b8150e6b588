/**
 * The one error core throws for input it cannot use: it names the field, what would be right and what came.
 *
 * The sentence is built here and nowhere else, as a fragment: function, field, limit, value, no full stop.
 * `path`, `expected` and `received` carry the same as data, for a form or a list of faults.
 *
 * @example
 * new InputError("line", "bore", "more than 0 m", NaN).message // "line requires bore to be more than 0 m, got NaN"
 */
export class InputError extends Error {
  /** Which function refused, e.g. "line". */
  readonly caller: string;
  /** Which field is wrong, e.g. "bore" or "points[1].flow". */
  readonly path: string;
  /** What would be right, e.g. "more than 0 m". */
  readonly expected: string;
  /** What came. */
  readonly received: unknown;

  constructor(caller: string, path: string, expected: string, received: unknown) {
    super(`${caller} requires ${path} to be ${expected}, got ${shown(received)}`);
    this.name = "InputError";
    this.caller = caller;
    this.path = path;
    this.expected = expected;
    this.received = received;
  }
}

function shown(value: unknown): string {
  if (typeof value === "string") return JSON.stringify(value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === "object" && value !== null) return "an object";
  if (typeof value === "function") return "a function";
  // String also takes what JSON cannot show: NaN, Infinity, undefined, -0 as 0.
  return String(value);
}
