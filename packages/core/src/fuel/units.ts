// Published laws are written in these units; core converts at the law, from exact definitions.

/** One mm2/s (centistoke), m2/s. */
export const mm2PerSecond = 1e-6;

/** One pound-force per square inch, Pa: 0.45359237 kg times 9.80665 m/s2 over (0.0254 m)2, all exact by definition. */
export const psi = (0.45359237 * 9.80665) / 0.0254 ** 2;

/** 15 degC, the base temperature of fuel densities, K. */
export const fifteenCelsius = 288.15;

/** Ice point, K. */
export const icePoint = 273.15;
