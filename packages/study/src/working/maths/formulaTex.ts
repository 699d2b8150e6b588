import type { Formula } from "../Formula.js";
import { greek } from "./greek.js";
import type { ExpressionNode } from "./mathjs.js";
import { parseFormula } from "./parseFormula.js";

/**
 * A formula for a typesetter: its result, an equals sign and its text, in TeX's mathematical notation.
 *
 * Products are written without a sign, quotients as fractions; a letter that goes over several values has an index.
 *
 * @example
 * formulaTex(reynolds) // "\\mathrm{Re} = \\frac{4 \\, \\left|Q\\right|}{\\pi \\, D \\, \\nu}"
 */
export function formulaTex({ text, result }: Pick<Formula, "text" | "result">): string {
  return `${letterTex(result.letter)} = ${texOf(parseFormula(text), 0, letterTex)}`;
}

/** A letter for a typesetter: "rho_15" is "\\rho_{15}", "Re" is upright. */
export function letterTex(letter: string): string {
  const [base = "", ...index] = letter.split("_");
  const known = greek[base]?.tex;
  const shown = known ?? (base === "dp" ? "\\Delta p" : base.length > 1 ? `\\mathrm{${base}}` : base);
  return index.length === 0 ? shown : `${shown}_{${index.join("\\mathrm{,}")}}`;
}

/** What is written for a letter, in TeX. */
export type Letter = (letter: string) => string;

/** How tightly each operation binds; what binds less than its surroundings is put in brackets. */
const BINDING: Readonly<Record<string, number>> = { "+": 1, "-": 1, "*": 2, "/": 2, "^": 4 };
/** How tightly an exponent binds what it stands over. */
const BASE = 5;

/**
 * An expression in TeX.
 *
 * @param around how tightly what stands around it binds
 * @param letter what is written for a letter
 */
export function texOf(node: ExpressionNode, around: number, letter: Letter): string {
  switch (node.type) {
    case "ParenthesisNode":
      return node.content ? texOf(node.content, around, letter) : "";
    case "ConstantNode":
      return numberTex(String(node.value));
    case "SymbolNode":
      return letter(node.name ?? "");
    case "FunctionNode":
      return functionTex(node, letter);
    default:
      return operatorTex(node, around, letter);
  }
}

function numberTex(text: string): string {
  const [digits = "", exponent] = text.split("e");
  return exponent === undefined ? digits : `${digits} \\cdot 10^{${Number(exponent)}}`;
}

function operatorTex({ op = "", args = [] }: ExpressionNode, around: number, letter: Letter): string {
  const inner = (node: ExpressionNode, tightness: number) => texOf(node, tightness, letter);
  const [left, right] = args;
  if (!left) return "";
  const own = BINDING[op] ?? 0;
  const bracketed = (text: string) => (own < around ? `\\left(${text}\\right)` : text);
  // A sign in front binds as a product does.
  if (!right) return around > 2 ? `\\left(${op}${inner(left, 3)}\\right)` : `${op}${inner(left, 3)}`;
  switch (op) {
    case "/":
      // A fraction holds itself together anywhere but under an exponent.
      return inBase(around, `\\frac{${inner(left, 0)}}{${inner(right, 0)}}`);
    case "^":
      return inBase(around, `${inner(left, BASE)}^{${inner(right, 0)}}`);
    case "*":
      return bracketed(`${inner(left, own)} ${isNumber(right) ? "\\cdot" : "\\,"} ${inner(right, own + 0.5)}`);
    default:
      return bracketed(`${inner(left, own)} ${op} ${inner(right, op === "-" ? own + 0.5 : own)}`);
  }
}

function inBase(around: number, text: string): string {
  return around === BASE ? `\\left(${text}\\right)` : text;
}

function isNumber(node: ExpressionNode): boolean {
  if (node.type === "OperatorNode") return node.args?.[0] !== undefined && isNumber(node.args[0]);
  return node.type === "ConstantNode";
}

function functionTex({ fn, args = [] }: ExpressionNode, letter: Letter): string {
  const name = typeof fn === "object" ? fn.name : "";
  const inside = args.map((one) => texOf(one, 0, letter)).join(", ");
  switch (name) {
    case "sqrt":
      return `\\sqrt{${inside}}`;
    case "abs":
      return `\\left|${inside}\\right|`;
    case "sum":
      return `\\sum_i ${args[0] ? texOf(args[0], 2, letter) : ""}`;
    case "log":
      return `\\ln\\left(${inside}\\right)`;
    case "log10":
      return `\\log_{10}\\left(${inside}\\right)`;
    case "sign":
      return `\\mathrm{sign}\\left(${inside}\\right)`;
    default:
      return `\\${name}\\left(${inside}\\right)`;
  }
}
