/** A stream of numbers from 0 to below 1, the same for a seed. */
export type Draw = () => number;

/** Tommy Ettinger's mulberry32, in the public domain. */
export function drawFrom(seed: number): Draw {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** What hostile hands put into files: numbers that are none, code, keys of prototypes, characters that are not text. */
const put = [
  ".nan 1e309 -1e-320 0 -1 1e308 m .inf 0x1F 1_000 ١٢ ½ 1e5000 null ~ true !!js/function > | * & ? : - # [ ] { } \" '".split(
    " ",
  ),
  [
    "<<: *pre",
    "&a [*a, *a]",
    "*pre",
    "__proto__: { hit: 1 }",
    "constructor: { prototype: { hit: 1 } }",
    " to 5",
    " ± 40 %",
  ],
  [
    "import('fs')",
    "globalThis.hit = 1",
    `\${globalThis.hit = 1}`,
    "=1+1",
    "sqrt(-1) mm",
    "(()=>{globalThis.hit=1})()",
    "a".repeat(3000),
  ],
  ["\u0000", "\ud800", "\u202e", "\ufeff", "é", "名前", "🜄", "\u2028", "\r", "\t", "\u00a0", "−1"],
].flat();

const units =
  "mm m in ft kPa psi bar inHg L/h gal/h m3/s degC K degF um mm2/s cSt cP kg/m3 mg/L h s km % g m2 kW fortnight".split(
    " ",
  );

function choose<Item>(draw: Draw, from: readonly Item[]): Item {
  return from[Math.floor(draw() * from.length)] as Item;
}

type Spoiler = (text: string, draw: Draw) => string;

const lines =
  (change: (rows: string[], at: number, draw: Draw) => void): Spoiler =>
  (text, draw) => {
    const rows = text.split("\n");
    change(rows, Math.floor(draw() * rows.length), draw);
    return rows.join("\n");
  };

/** Replaces one of the places a pattern is found at. */
const replaced =
  (pattern: RegExp, by: (found: string, draw: Draw) => string): Spoiler =>
  (text, draw) => {
    const found = [...text.matchAll(pattern)];
    const one = found[Math.floor(draw() * found.length)];
    if (!one) return text;
    return text.slice(0, one.index) + by(one[0], draw) + text.slice(one.index + one[0].length);
  };

const spoilers: readonly Spoiler[] = [
  (text, draw) => {
    const at = Math.floor(draw() * text.length);
    return text.slice(0, at) + choose(draw, put) + text.slice(at + Math.floor(draw() * 6));
  },
  (text, draw) => {
    const at = Math.floor(draw() * text.length);
    return text.slice(0, at) + String.fromCharCode(Math.floor(draw() * 256)) + text.slice(at + 1);
  },
  lines((rows, at, draw) => {
    const other = Math.floor(draw() * rows.length);
    [rows[at], rows[other]] = [rows[other] ?? "", rows[at] ?? ""];
  }),
  lines((rows, at) => rows.splice(at, 0, rows[at] ?? "")),
  lines((rows, at) => rows.splice(at, 1)),
  lines((rows, at, draw) => {
    rows[at] = " ".repeat(Math.floor(draw() * 9)) + (rows[at] ?? "").trimStart();
  }),
  lines((rows, at, draw) => rows.splice(at, 0, ...Array(Math.floor(draw() * 400)).fill(rows[at] ?? ""))),
  replaced(/\d+(\.\d+)?/g, (found, draw) => `${found}e${Math.floor(draw() * 700 - 350)}`),
  replaced(/\d+(\.\d+)?/g, (found, draw) => String(Number(found) * 10 ** Math.floor(draw() * 12 - 6))),
  replaced(/\d+(\.\d+)?/g, (_, draw) => choose(draw, put)),
  replaced(/(?<=\d )[a-zA-Z%][\w/%]*/g, (_, draw) => choose(draw, units)),
  replaced(/[a-z][a-z ]*(?=:)/g, (_, draw) => choose(draw, put)),
  replaced(/\{[^{}]*\}/g, (found, draw) => `&x${Math.floor(draw() * 9)} { a: ${found}, <<: ${found} }`),
  replaced(/[,;\t:]/g, (_, draw) => choose(draw, [",", ";", "\t", ": ", ",,", '"'])),
  (text, draw) => text.slice(0, Math.floor(draw() * text.length)),
  (text, draw) => text + text.slice(Math.floor(draw() * text.length)),
];

/** A file's text with one to five things done to it. */
export function spoilt(text: string, draw: Draw): string {
  let made = text;
  for (let left = 1 + Math.floor(draw() * 5); left > 0; left--) made = choose(draw, spoilers)(made, draw);
  return made;
}

/** The same in bytes, now and then with some of them flipped. */
export function spoiltBytes(text: string, draw: Draw): Uint8Array {
  const bytes = new TextEncoder().encode(spoilt(text, draw));
  for (let left = Math.floor(draw() * 4); left > 0 && bytes.length > 0; left--) {
    const at = Math.floor(draw() * bytes.length);
    bytes[at] = (bytes[at] ?? 0) ^ (1 << Math.floor(draw() * 8));
  }
  return bytes;
}
