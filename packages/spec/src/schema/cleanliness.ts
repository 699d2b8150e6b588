import { shown } from "../shown.js";
import { type Leaf, leaf } from "./leaf.js";

const example = "18/16/13";
// A scale number 0 to 28, ">=7" where fewer than 20 particles were counted, ">28" above the scale, "*" or "-" not counted.
const number = String.raw`(?:\*|-|>28|>=? ?\d{1,2}|≥ ?\d{1,2}|\d{1,2})`;
const pattern = new RegExp(`^${number}/${number}/${number}$`);

/** An ISO 4406 cleanliness code, kept as text without spaces; it is a range of counts already, so it takes no spread. */
export function cleanlinessCode(): Leaf<string> {
  const right = `write a code of three scale numbers such as ${example}`;
  const json = {
    type: "string",
    description: `an ISO 4406 code, such as ${example}; in quotes when it begins with * or >`,
    examples: [example],
  };
  return leaf(`an ISO 4406 code such as ${example}`, json, "", (value) => {
    if (typeof value === "string" && /±|\+\/-| to /.test(value)) {
      const message = `${shown(value)}: a code takes no spread; write the dirtier of two codes, or solids, which take one`;
      return { fault: { code: "code with a spread", message } };
    }
    const code = typeof value === "string" && value.length < 30 ? value.replace(/ /g, "").replace(/≥/g, ">=") : "";
    if (!pattern.test(code)) {
      return { fault: { code: "not a code", message: `${shown(value)} is not an ISO 4406 code; ${right}` } };
    }
    const scale = code
      .split("/")
      .map((part) => (part === ">28" ? 29 : Number(part.replace(/^>=?/, "").replace(/^[*-]$/, "NaN"))));
    if (scale.some((one) => one > 29 || (one > 28 && !code.includes(">28")))) {
      return { fault: { code: "out of range", message: `${shown(value)}: scale numbers go from 0 to 28; ${right}` } };
    }
    // A rising pair would mean more large particles than small and large together.
    const rises = scale.some((one, at) => scale.slice(0, at).some((before) => one > before));
    if (rises) {
      const message = `${shown(value)}: a scale number is never above the one before it; ${right}`;
      return { fault: { code: "code rises", message } };
    }
    return { value: code };
  });
}
