/** A volatility class of petrol. */
export interface PetrolClass {
  readonly standard: "EN 228" | "ASTM D4814";
  readonly class: string;
  /** Vapour pressure at 37.8 degC, Pa; EN 228 has a lower limit too. */
  readonly vapourPressure: { readonly from?: number; readonly to: number };
  /** Vapour lock index, at most: 10 × vapour pressure in kPa + 7 × per cent evaporated at 70 degC. */
  readonly vapourLockIndexAtMost?: number;
}

const en228 = (name: string, from: number, to: number, vapourLockIndexAtMost?: number): PetrolClass => ({
  standard: "EN 228",
  class: name,
  vapourPressure: { from, to },
  ...(vapourLockIndexAtMost === undefined ? {} : { vapourLockIndexAtMost }),
});

const d4814 = (name: string, to: number): PetrolClass => ({
  standard: "ASTM D4814",
  class: name,
  vapourPressure: { to },
});

/**
 * Volatility classes of petrol: EN 228 (limits seen restated; vapour lock index of table 4 from memory) and ASTM D4814
 * (table 1, limits in kPa seen in the Gasoline FAQ). Which class is sold follows season and place.
 */
export const petrolClasses: readonly PetrolClass[] = [
  en228("A", 45e3, 60e3),
  en228("B", 45e3, 70e3),
  en228("C", 50e3, 80e3),
  en228("C1", 50e3, 80e3, 1050),
  en228("D", 60e3, 90e3),
  en228("D1", 60e3, 90e3, 1150),
  en228("E", 65e3, 95e3),
  en228("E1", 65e3, 95e3, 1200),
  en228("F", 70e3, 100e3),
  en228("F1", 70e3, 100e3, 1250),
  d4814("AA", 54e3),
  d4814("A", 62e3),
  d4814("B", 69e3),
  d4814("C", 79e3),
  d4814("D", 93e3),
  d4814("E", 103e3),
];
