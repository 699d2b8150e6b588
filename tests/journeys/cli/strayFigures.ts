/**
 * Where an answer in JSON is not as promised: a number, or a null in place of one, that stands outside { value, unit }; a
 * unit that is not one of the question's; and a gap without a reason, or a reason without a gap.
 *
 * @param units those that the question's figures may have; any where left out
 */
export function strayFigures(value: unknown, units?: readonly string[], path = ""): string[] {
  if (typeof value === "number") return [path];
  if (typeof value !== "object" || value === null) return [];
  if ("value" in value) return isFigure(value, units) ? [] : [path];
  return Object.entries(value).flatMap(([key, inner]) => strayFigures(inner, units, `${path}.${key}`));
}

function isFigure(given: object, units: readonly string[] | undefined): boolean {
  const { value, unit, reason } = given as { value: unknown; unit?: unknown; reason?: unknown };
  if (typeof unit !== "string" || units?.includes(unit) === false) return false;
  const gaps = Array.isArray(value) ? value.includes(null) : value === null;
  const numbers = Array.isArray(value) ? value.filter((one) => one !== null) : gaps ? [] : [value];
  return numbers.every((one) => typeof one === "number") && gaps === (typeof reason === "string");
}
