import type { System } from "@thirstline/spec/system";

/** A demonstration system the page can open. */
export interface Example {
  /** such as "heron.yaml" */
  readonly file: string;
  readonly system: System;
  /** what its file does not say and was taken */
  readonly cautions?: readonly { readonly message: string }[];
}
