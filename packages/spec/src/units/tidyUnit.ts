// What people and word processors write, and what it means to the parser. Order matters: characters first, then words.
const rewrites: readonly (readonly [RegExp, string])[] = [
  [/[\u00a0\u2000-\u200a\u202f\u205f\u3000]/g, " "], // no-break, thin and other typographic spaces
  [/[\u00b5\u03bc]/g, "u"], // micro sign, Greek mu
  [/\u00b0\s?/g, "deg"], // degree sign; "° C" too
  [/\u2103/g, "degC"],
  [/\u2109/g, "degF"],
  [/\u00b2/g, "^2"],
  [/\u00b3/g, "^3"],
  [/[\u00b7\u22c5\u2219\u00d7]/g, "*"], // middle dots, multiplication sign
  [/[\u2044\u2215]/g, "/"], // fraction and division slash
  [/[\u2212\u2013]/g, "-"], // minus sign, en dash
  [/(?:\bin\.? ?|["\u2033] ?)(Hg|H2O)\b/g, "in$1"], // "6 in. Hg", '6 "Hg'
  [/\bmm (Hg|H2O)\b/g, "mm$1"],
  [/\b[Ii]mp(?:erial|\.)? ?gal(?:lons?)?\b/g, "impgal"],
  [/\b(?:US|U\.S\.) ?gal(?:lons?)?\b/g, "gal"],
  [/\bfl\.? ?oz\b\.?/g, "floz"],
  [/Pa\.?s\b/g, "Pa*s"], // "mPa.s" and "mPas", as standards and makers print it
  [/\bdeg ([CF])\b/g, "deg$1"],
  // "g/kW h" is written for "g/(kW h)" throughout the trade; nobody means grams times hours.
  [/\((kW|hp)[ *-]?(hr?)\)/g, "$1$2"],
  [/\bkW[ *-]?h\b/g, "kWh"],
  [/\bhp[ *-]?hr?\b/g, "hph"],
];

/** A quantity's text in plain characters: "3 mm²/s" becomes "3 mm^2/s", "4 µm" becomes "4 um". */
export function tidyUnit(text: string): string {
  return rewrites.reduce((tidy, [from, to]) => tidy.replace(from, to), text).trim();
}
