import { type ExpressionNode, maths } from "./mathjs.js";

const FUNCTIONS = new Set(["abs", "exp", "log", "log10", "max", "min", "sign", "sqrt", "sum"]);
const OPERATORS = new Set(["+", "-", "*", "/", "^"]);
const KINDS = new Set(["ConstantNode", "SymbolNode", "OperatorNode", "ParenthesisNode", "FunctionNode"]);
/** Far longer than any formula; a sum over all sizes of particles is written out. */
const LONGEST = 50_000;

const known = new Map<string, ExpressionNode>();

/**
 * The tree of a formula's text. Only plain arithmetic, a few functions and `pi` are let through, whatever else the parser
 * understands: there is no way from a text to anything but a number.
 *
 * @param text in mathjs's notation
 * @throws Error for anything else, which is a mistake of ours and not of a file
 */
export function parseFormula(text: string): ExpressionNode {
  const found = known.get(text);
  if (found) return found;
  if (text.length > LONGEST) throw new Error(`a formula of ${text.length} characters`);
  const node = maths.parse(text);
  requirePlain(node, text);
  // Bounded: sums written out differ from system to system, and a page may see many.
  if (known.size >= 500) known.clear();
  known.set(text, node);
  return node;
}

function requirePlain(node: ExpressionNode, text: string): void {
  const { fn } = node;
  // A method of something is a function too, and has a name like any other.
  const called = typeof fn === "object" && fn.type === "SymbolNode" ? fn.name : undefined;
  const plain =
    KINDS.has(node.type) &&
    (node.type !== "ConstantNode" || typeof node.value === "number") &&
    (node.type !== "FunctionNode" || FUNCTIONS.has(called ?? "")) &&
    (node.type !== "OperatorNode" || OPERATORS.has(node.op ?? ""));
  if (!plain) throw new Error(`a formula may not hold "${node.op ?? called ?? node.type}": ${text}`);
  for (const inner of [...(node.args ?? []), ...(node.content ? [node.content] : [])]) requirePlain(inner, text);
}
