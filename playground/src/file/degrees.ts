/** How a temperature is written, and read back: as one of the fuel, or as one at which something in it changes. */
export function degrees(key: string, kind: "temperature" | "coldPoint" = "temperature") {
  return { key, unit: "temperature", kind } as const;
}
