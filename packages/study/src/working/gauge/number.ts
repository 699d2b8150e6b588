/** A plain number as a step's figure, by its name. */
export function number(name: string, value: number) {
  return { name, value, unit: "1", kind: "plain" } as const;
}
