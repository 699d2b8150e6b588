import type { WhyQuery } from "../args/readWhy.js";
import type { WhyOf } from "../json/whyJson.js";
import type { Subject } from "./Subject.js";

/** Which question a figure is of, and what of its answer, for programs. */
export function ofWhich({ of }: WhyQuery, { label }: Subject): WhyOf {
  return { ...(of === null ? {} : { of }), ...(label === "" ? {} : { subject: label }) };
}
