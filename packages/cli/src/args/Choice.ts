import type { AskedRating, RemedyKind } from "@thirstline/study";

/** What choosing commands were asked besides a query, in SI; null and empty for the answer's own. */
export interface Choice {
  readonly at: readonly string[];
  readonly with: string | null;
  readonly from: string | null;
  readonly fitted: string | null;
  readonly code: string | null;
  readonly rating: AskedRating | null;
  /** s */
  readonly interval: number | null;
  readonly labour: number | null;
  readonly stoppage: number | null;
  readonly costs: Partial<Record<RemedyKind, number>>;
  readonly side: "suction" | "delivery" | null;
  readonly parallel: number | null;
  readonly stages: number | null;
  /** m */
  readonly bores: readonly number[];
  readonly rows: number;
}
