import type { UnitSystem } from "@thirstline/study";

/** What was asked, in SI. */
export interface Query {
  /** K; empty for the file's own */
  readonly temperatures: readonly number[];
  /** m3/s; null for the file's own */
  readonly demand: number | null;
  /** m3/s; null for the answer's own */
  readonly to: number | null;
  /** null for the answer's own */
  readonly points: number | null;
  /** how often what is uncertain is drawn */
  readonly draws: number;
  readonly seed: number;
  /** threads; null for as many as there are processors */
  readonly workers: number | null;
  readonly units: UnitSystem;
  readonly form: "text" | "json" | "csv";
}
