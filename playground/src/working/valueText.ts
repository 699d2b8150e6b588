import { quantity, type UnitSystem, unitOf } from "@thirstline/study";
import type { Step } from "@thirstline/study/working";
import { html, type TemplateResult } from "lit";

/** Digits a value is put into a formula with. */
const DIGITS = 6;

/** A number in the digits it is put in with: "9261.14", "1.2e-5". */
function digitsOf(value: number): string {
  const rounded = Number(value.toPrecision(DIGITS));
  const size = Math.abs(rounded);
  const plain = size === 0 || (size >= 1e-3 && size < 1e7);
  return plain ? String(rounded) : rounded.toExponential().replace("e+", "e");
}

const POWERS: Readonly<Record<string, string>> = { "2": "²", "3": "³", "4": "⁴" };

/** A unit as people write it: "kg/m³". */
export function unitWords(unit: string): string {
  return unit.replace(/([A-Za-z])([234])/g, (_, name: string, power: string) => `${name}${POWERS[power]}`);
}

/** A value in SI, as it is put into a formula; powers of ten as programs write them, for `powersHtml`. */
export function siText(value: number, unit: string): string {
  const digits = digitsOf(value);
  return unit === "1" ? digits : `${digits} ${unitWords(unit)}`;
}

/** A value as the reader's units have it, and in SI where that is another thing; else "". */
export function valueText(
  { value, unit, kind }: Step,
  units: UnitSystem,
): { readonly shown: string; readonly si: string } {
  const si = siText(value, unit);
  if (kind === null || kind === "plain") return { shown: si, si: "" };
  const { size, zero = 0 } = unitOf(kind, units);
  const shown = quantity(value, kind, units);
  const same =
    (value === 0 && zero === 0) || (size === 1 && zero === 0 && Number.parseFloat(shown) === Number(digitsOf(value)));
  return { shown, si: same ? "" : si };
}

/** A text with its powers of ten as people write them: "1.2e-5" is 1.2 × 10 to the power of -5. */
export function powersHtml(text: string): TemplateResult {
  const pieces = text.split(/(?<=\d)e(-?\d+)/);
  return html`${pieces.map((piece, at) => (at % 2 === 0 ? piece : html` × 10<sup>${piece.replace("-", "−")}</sup>`))}`;
}

/** A value and its unit in TeX's mathematical notation. */
export function valueTex(value: number, unit: string): string {
  const [digits = "", power] = digitsOf(value).split("e");
  const number = power === undefined ? digits : `${digits} \\cdot 10^{${power}}`;
  return unit === "1" ? number : `${number}\\,${unitTex(unit)}`;
}

function unitTex(unit: string): string {
  const powers = unit.replace(/([A-Za-z])(\d)/g, "$1^{$2}").replaceAll(" ", "\\,");
  return `\\mathrm{${powers}}`;
}
