/** What the engine asks for: its burn, or power and specific consumption, which fix mass; and what it sends back. */
export type SystemDemand =
  /** burn and return, m3/s */
  | { readonly burn: number; readonly return: number }
  /** power, W; specific consumption, kg/J; return, m3/s */
  | { readonly power: number; readonly specificConsumption: number; readonly return: number };
