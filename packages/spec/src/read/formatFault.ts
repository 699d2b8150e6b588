import type { Fault } from "./Fault.js";

/**
 * A fault on one line: file and line, path, what is wrong and what would be right.
 *
 * @example
 * formatFault(fault) // 'heron.yaml:7 suction[0].line.bore: "10" has no unit; write it as "10 mm"'
 */
export function formatFault(fault: Fault): string {
  const place = `${fault.file}:${fault.line}`;
  return `${fault.path === "" ? place : `${place} ${fault.path}`}: ${fault.message}`;
}
