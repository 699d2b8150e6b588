/** The invented readings that come with the page, and what each is of. */
export const demoReadings = [
  { path: "readings/heron-loading.csv", words: "Elements that fill" },
  { path: "readings/heron-jump.csv", words: "One bad delivery of fuel" },
  { path: "readings/heron-air.csv", words: "Air before the pump" },
  { path: "readings/heron-wax.csv", words: "Wax in a cold spring" },
  { path: "readings/heron-high-when-new.csv", words: "A wrong element" },
] as const;
