/** A number that YAML has read already, as a file has it. */
export function asWritten(given: string | number): string {
  if (Number.isNaN(given)) return ".nan";
  if (given === Number.POSITIVE_INFINITY) return ".inf";
  return given === Number.NEGATIVE_INFINITY ? "-.inf" : String(given);
}
