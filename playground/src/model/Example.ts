import type { System } from "@thirstline/spec/system";

/** A demonstration system the page can open. */
export interface Example {
  /** such as "heron.yaml" */
  readonly file: string;
  readonly system: System;
}
